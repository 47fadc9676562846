import { computed, effect, signal } from '@preact/signals';
import { countsByPlayer } from '../core/drill/counting-rules.ts';
import { type Drill, rolesDiffer, termsOf } from '../core/drill/drill.ts';
import { lanesOn } from '../core/drill/fit-court.ts';
import {
  type OpenRound,
  type Practice,
  roundsThatCount,
  stepsPlayed,
} from '../core/ledger/practice.ts';
import type { Wish } from '../core/ledger/wishes.ts';
import { assignCourts, type CourtRound } from '../core/planning/assign-courts.ts';
import {
  nextStep,
  partnersChange,
  roundsOfSteps,
  type Step,
  type StepPlayed,
} from '../core/round/block.ts';
import { evenRoles, timesFirst } from '../core/round/even-roles.ts';
import type { Pair } from '../core/round/pair.ts';
import { FEWEST_PLAYERS, MOST_PLAYERS, pairUp, rePair } from '../core/round/pairs.ts';
import { roundsPlayed } from '../core/round/rounds-played.ts';
import { MOST_CHECKS } from '../core/round/spot-checks.ts';
import { currentPlan, lastRound, obstacle } from './actions.ts';
import { append, library, squadSettings } from './ledger.ts';
import { history, openPractice } from './practices.ts';

/** The round of the block that comes next, as it was set or is proposed. */
export interface Coming {
  /** Which round of the block it is, from 1; undefined where nothing of the block is left. */
  number?: number;
  /** Left out where nothing of the block is left. */
  step?: Step;
  drill?: Drill;
  /** Everyone who is here, also those who wait. */
  pairs: Pair[];
  /** Letters of the pairs that count for themselves and call their number at the horn. */
  called: string[];
  /** Whether the roles turn at half the clock. */
  turns: boolean;
  /** What is looked at: the drill's own focus, else that of the block; nothing where left out. */
  focus?: string;
  /** The coach's wishes that these pairs do not keep. */
  broken: Wish[];
  /** Who plays where and who waits; left out where the drill or the number of courts is not known. */
  courts?: CourtRound & { lanes: number };
}

/** Undefined where too few or too many are here. */
export const comingRound = computed<Coming | undefined>(() => {
  const practice = openPractice.value;
  if (!practice || practice.here.length < FEWEST_PLAYERS || practice.here.length > MOST_PLAYERS) {
    return undefined;
  }
  const waiting = waitingRound(practice);
  const played = stepsPlayed(practice);
  const planned = nextStep(currentPlan(), played);
  const step = planned?.step;
  const drill = step && library.value.drills.get(step.drill);
  const changes = planned !== undefined && partnersChange(planned.step, planned.turn);
  const proposed = pairsOf(practice, drill, changes);
  // Who begins stands as it was set, so that a swap of roles holds.
  const pairs = waiting || !drill ? proposed.pairs : withRoles(proposed.pairs, practice, drill);
  const courts = drill && courtsOf(practice, drill, pairs);
  const set = waiting?.terms.drill === drill?.id ? waiting : undefined;
  return {
    called: drill ? calledOf(drill, pairs, set) : [],
    turns: set?.turns ?? (drill !== undefined && mayTurn(drill) && rolesDiffer(drill)),
    ...(step && { step, number: roundsOfBlock(played) + 1 }),
    ...(drill && { drill }),
    ...(drill && focusAt(drill)),
    pairs,
    broken: proposed.broken,
    ...(courts && { courts }),
  };
});

const focusAt = ({ id }: Drill): { focus?: string } => {
  const focus = library.value.focusOf.get(id) ?? currentPlan().focus;
  return focus === undefined ? {} : { focus };
};

/** How many rounds of the block were played; one of a drill that is no longer in it is none. */
const roundsOfBlock = (played: readonly StepPlayed[]): number =>
  roundsOfSteps(currentPlan(), played).reduce((sum, rounds) => sum + rounds, 0);

/** The pairs that play the coming round; nobody where too few or too many are here. */
export const playingPairs = (): Pair[] => {
  const { courts, pairs = [] } = comingRound.value ?? {};
  return courts?.playing.map(({ pair }) => pair) ?? pairs;
};

/** Who counts for themselves: as it was chosen for the round, else as the drill was counted last. */
function calledOf(drill: Drill, pairs: readonly Pair[], set: OpenRound | undefined): string[] {
  const known = new Set(set?.tallies.map(({ pair }) => pair.letter));
  return pairs
    .map(({ letter }) => letter)
    .filter((letter) =>
      known.has(letter) ? set?.called.includes(letter) : library.value.called.has(drill.id),
    );
}

/** Whether roles can turn in mid-round: where each player has an own count both do the same. */
export const mayTurn = ({ rule }: Pick<Drill, 'rule'>): boolean => !countsByPlayer(rule);

/** The round that is set and waits for its Start. */
const waitingRound = (practice: Practice): OpenRound | undefined => {
  const last = lastRound(practice);
  return last?.clock ? undefined : last;
};

/** What proposes pairs by history, once it was loaded. */
const proposer = signal<typeof import('./pairs-by-history.ts') | undefined>(undefined);
let asked = false;
effect(() => {
  if (asked || (openPractice.value?.here.length ?? 0) < FEWEST_PLAYERS) return;
  asked = true;
  import('./pairs-by-history.ts').then(
    (file) => {
      proposer.value = file;
    },
    () => {}, // Pairs are made in the order of their coming.
  );
});

/** The pairs as they stood last, for whoever is still here; new ones at first and where partners turn. */
function pairsOf(
  practice: Practice,
  drill: Drill | undefined,
  turn: boolean,
): Pick<Coming, 'pairs' | 'broken'> {
  const { here } = practice;
  const last = lastRound(practice);
  const stood = last && everyoneIn(last);
  const before = turn && last?.clock ? undefined : stood;
  const places = drill && placesAt(drill);
  const crowded = places !== undefined && Math.floor(here.length / 2) > places;
  const played = crowded ? playedToday(practice) : undefined;
  const proposed = proposer.value?.pairsByHistory(here, before, played);
  return proposed ?? { pairs: (stood && rePair(stood, here)) ?? pairUp(here), broken: [] };
}

/** All pairs of a round, also those that waited for a court, by their letters. */
const everyoneIn = ({ tallies, waiting = [] }: OpenRound): Pair[] =>
  [...tallies.map(({ pair }) => pair), ...waiting].sort((a, b) => (a.letter < b.letter ? -1 : 1));

/** How many pairs can play a drill at once; undefined where the number of courts is not known. */
function placesAt(drill: Drill): number | undefined {
  const { courts, size } = squadSettings.value;
  return courts === undefined ? undefined : courts * lanesOn(drill, size).length;
}

/** How many pairs of those who are here wait at a drill; undefined where the courts are not known. */
export function pairsWaiting(drill: Drill): number | undefined {
  const places = placesAt(drill);
  const pairs = Math.floor((openPractice.value?.here.length ?? 0) / 2);
  return places === undefined ? undefined : Math.max(0, pairs - places);
}

const playedToday = (practice: Practice): Map<string, number> =>
  roundsPlayed(roundsThatCount(practice));

/**
 * Who has which role: whoever had the first less often today at this drill; where that is even,
 * whoever has waited longer for its strokes; and else by the drill's earlier rounds.
 */
function withRoles(pairs: readonly Pair[], practice: Practice, drill: Drill): Pair[] {
  const earlier = (history.value ?? []).flatMap(({ rounds }) => rounds);
  const before = evenRoles(pairs, timesFirst(earlier, drill.id));
  const due = proposer.value?.rolesByHistory(before, termsOf(drill)) ?? before;
  return evenRoles(due, timesFirst(roundsThatCount(practice), drill.id));
}

function courtsOf(practice: Practice, drill: Drill, pairs: readonly Pair[]): Coming['courts'] {
  const { courts, size } = squadSettings.value;
  if (courts === undefined) return undefined;
  const lanes = lanesOn(drill, size).length;
  const [round] = assignCourts({ pairs, courts, perCourt: lanes, played: playedToday(practice) });
  return round && { ...round, lanes };
}

/** Spot checks of a round: as many as the block wants, and as there can be beside the tapping. */
function checksOf(isCalled: boolean): number {
  const most = MOST_CHECKS[isCalled ? 'called' : 'tapped'];
  return Math.min(currentPlan().checks ?? most, most);
}

/**
 * Sets the coming round of the block, or sets it again where its pairs, its drill or its length
 * were changed before its Start. Nothing happens where the block has no further round.
 *
 * @param change what is not as it was proposed: everyone's pairs, who calls, whether roles turn
 */
export function setRound(change: Partial<Pick<Coming, 'pairs' | 'called' | 'turns'>> = {}): void {
  const practice = openPractice.value;
  const coming = comingRound.value;
  if (!practice || !coming?.drill || obstacle(practice)) return;
  const { drill, step, focus } = coming;
  const { pairs: everyone, called, turns } = { ...coming, ...change };
  const courts = courtsOf(practice, drill, everyone);
  const set = waitingRound(practice);
  const playing = courts?.playing.map(({ pair }) => pair) ?? everyone;
  const calling = playing.map(({ letter }) => letter).filter((letter) => called.includes(letter));
  const said = {
    ...(step?.id !== undefined && { step: step.id }),
    terms: termsOf(drill, step?.size),
    seconds: currentPlan().seconds,
    pairs: playing,
    ...(courts && courts.waiting.length > 0 && { waiting: courts.waiting }),
    ...(calling.length > 0 && { called: calling }),
    ...(turns && { turns }),
    ...(focus !== undefined && { focus, checks: checksOf(calling.length === playing.length) }),
  };
  const stands = set && {
    ...(set.step !== undefined && { step: set.step }),
    terms: set.terms,
    seconds: set.seconds,
    pairs: set.tallies.map(({ pair }) => pair),
    ...(set.waiting && { waiting: set.waiting }),
    ...(set.called.length > 0 && { called: set.called }),
    ...(set.turns && { turns: set.turns }),
    ...(set.focus !== undefined && { focus: set.focus, checks: set.checks }),
  };
  if (JSON.stringify(said) === JSON.stringify(stands)) return;
  const ordinal = set?.slot ?? 1 + Math.max(-1, ...practice.rounds.map(({ slot }) => slot));
  append({
    kind: 'round-set',
    practice: practice.id,
    // Two phones that share out the courts of one practice set the same round by the same name.
    round: set?.said.round ?? `${practice.id.slice(0, 36)}-${ordinal}`,
    ordinal,
    ...said,
  });
}
