import { termsOf } from '../core/drill/drill.ts';
import { starterDrills } from '../core/drill/starter-drills.ts';
import type { Plan, Step } from '../core/round/block.ts';
import type { Pair } from '../core/round/pair.ts';
import { FEWEST_PLAYERS, pairUp, rePair } from '../core/round/pairs.ts';
import type { Random } from './random.ts';
import type { Say } from './recorder.ts';
import { playRound, type Truth } from './round.ts';
import type { Success } from './skill.ts';
import type { Member } from './squad.ts';
import { turnPartners, turnRoles } from './turning.ts';
import { turnsOf } from './turns.ts';

/** The smallest part of the squad that comes to a practice. */
const LEAST_ATTENDANCE = 0.7;
/** How often someone comes late, or has to leave before the last round. */
const COMES_LATE = 0.4;
const LEAVES_EARLY = 0.1;

/**
 * Plays a practice that begins at `start` milliseconds since 1970 and says all its entries, from
 * its opening to its close. Gives back what really happened in its rounds.
 */
export function playPractice(
  date: string,
  start: number,
  squad: readonly Member[],
  plan: Plan,
  success: Success,
  random: Random,
  say: Say,
): Truth[] {
  const practice = random.id();
  const truth: Truth[] = [];
  let at = start;
  const pass = (median: number) => {
    at += random.logNormal(median, 0.3);
    return at;
  };
  say({ kind: 'practice-opened', practice, date }, at);

  const here = attending(squad, random);
  const spare = here.length > FEWEST_PLAYERS + 1;
  const latecomer = spare && random.chance(COMES_LATE) ? here.pop() : undefined;
  const lateRound = 1 + random.below(2);
  for (const player of here) say({ kind: 'player-came', practice, player }, pass(2_000));
  say({ kind: 'block-planned', practice, plan }, pass(40_000));

  const turns = turnsOf(plan);
  let pairs: Pair[] | undefined;
  for (const [ordinal, { step, turn }] of turns.entries()) {
    if (latecomer !== undefined && ordinal === lateRound) {
      here.push(latecomer);
      say({ kind: 'player-came', practice, player: latecomer }, pass(5_000));
    }
    if (spare && ordinal === turns.length - 1 && random.chance(LEAVES_EARLY)) {
      say({ kind: 'player-left', practice, player: here.shift()! }, pass(5_000));
    }
    const drill = starterDrills.find(({ id }) => id === step.drill)!;
    pairs = nextPairs(pairs, here, step, turn);
    const terms = termsOf(drill, step.size);
    const round = { practice, round: random.id(), ordinal, terms, seconds: plan.seconds, pairs };
    const played = playRound(round, pass(90_000), success, random, say);
    truth.push(...played.truth);
    at = played.end;
  }
  say({ kind: 'practice-closed', practice }, pass(60_000));
  return truth;
}

/** Who comes, in the order of arrival: 70% of the squad to all of it, the keen ones more often. */
function attending(squad: readonly Member[], random: Random): string[] {
  const most = Math.floor(squad.length * (1 - LEAST_ATTENDANCE) + 1e-9);
  const absent = random.below(most + 1);
  const byWill = squad
    .map(({ id, keen }) => ({ id, will: keen * random.unit() }))
    .sort((a, b) => a.will - b.will);
  return random.shuffled(byWill.slice(absent).map(({ id }) => id));
}

/** The pairs of a round, as the app proposes them. */
function nextPairs(
  before: readonly Pair[] | undefined,
  here: readonly string[],
  { partners }: Step,
  turn: number,
): Pair[] {
  const stayed = before && rePair(before, here);
  if (!stayed) return pairUp(here);
  if (partners === 'turn') return turnPartners(stayed);
  return turn > 0 ? turnRoles(stayed) : stayed;
}
