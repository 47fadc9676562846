import { computed, effect, signal, untracked } from '@preact/signals';
import { estimateOf, isCurrent } from '../core/figures/estimate.ts';
import { pacesBy } from '../core/figures/paces.ts';
import {
  type Estimate,
  type PlayedRound,
  type PlayedTally,
  type Summary,
  workedOutOf,
} from '../core/ledger/summary.ts';
import { isHeard } from '../core/round/tally.ts';
import type { Pace } from '../core/round/tempo.ts';
import { currentRound, isRunning, roundRuns } from './actions.ts';
import { idle } from './device/idle.ts';
import { history, keepEstimates, openPractice, practice, summaries } from './practices.ts';

/*
 * All touches of a round take a phone up to a tenth of a second to work out. So they are worked out
 * once, when the round is settled and the phone has nothing else to do, and never while a clock
 * runs. Those of a packed practice are kept in its summary; those of today are held here, by what
 * they are made from, so that a changed mark asks for its own round only.
 */

const held = signal<ReadonlyMap<string, Estimate>>(new Map());

const madeFrom = (round: PlayedRound, tally: PlayedTally, pace?: Pace): string => {
  const { estimate: _, ...counted } = tally;
  return JSON.stringify([workedOutOf(round, counted), pace]);
};

const paces = computed(() => pacesBy(summaries.value));

const paceOf = ({ practice }: Summary, { terms }: PlayedRound): Pace | undefined =>
  paces.value.get(practice)?.[terms.drill];

/** Practices as figures read them, oldest first, with the estimates that are there already. */
export const estimated = computed<readonly Summary[]>(() =>
  summaries.value.map((summary) =>
    withEstimates(
      summary,
      (round, tally) =>
        tally.estimate ?? held.value.get(madeFrom(round, tally, paceOf(summary, round))),
    ),
  ),
);

/** The practice itself where nothing of it changes: figures keep what they made of a practice with it. */
function withEstimates(
  summary: Summary,
  of: (round: PlayedRound, tally: PlayedTally) => Estimate | undefined,
): Summary {
  let isSame = true;
  const rounds = summary.rounds.map((round) => ({
    ...round,
    tallies: round.tallies.map((tally) => {
      const estimate = of(round, tally);
      if (estimate === tally.estimate || !estimate) return tally;
      isSame = false;
      return { ...tally, estimate };
    }),
  }));
  return isSame ? summary : { ...summary, rounds };
}

/** How many pairs' rounds still wait for their estimate. */
export const waiting = computed(
  () =>
    estimated.value.flatMap((summary) =>
      summary.rounds
        .filter((round) => isReady(summary, round))
        .flatMap(({ tallies }) => tallies.filter((tally) => isHeard(tally) && !tally.estimate)),
    ).length,
);

/** Whether a round's count stands: settled, passed over, or its practice closed or of another day. */
function isReady(summary: Summary, round: PlayedRound): boolean {
  const open = openPractice.value;
  if (open?.id !== summary.practice) return true;
  return open.rounds.find(({ id }) => id === round.id)?.left ?? false;
}

/**
 * Works out from now on whatever estimate is not there, or was made by an older model or pace. A
 * mark must cost nothing here: while a clock runs not even what is lacking is looked for.
 */
export function startEstimating(): void {
  effect(() => {
    void history.value;
    if (!isRunning(currentRound(practice.value))) untracked(() => void work());
  });
}

/** What had been measured of a drill by now. */
export const paceNow = (drill: string): Pace | undefined =>
  [...paces.value.values()].at(-1)?.[drill];

/** Works out one pair's estimate of a round that is not settled yet, for what settle has to say of it. */
export async function estimateNow(roundId: string, letter: string): Promise<void> {
  await idle();
  for (const summary of summaries.value) {
    const round = summary.rounds.find(({ id }) => id === roundId);
    const tally = round?.tallies.find(({ pair }) => pair.letter === letter);
    if (!round || !tally) continue;
    const pace = paceOf(summary, round);
    const from = madeFrom(round, tally, pace);
    if (held.value.has(from)) return;
    const estimate = estimateOf(round, tally, pace);
    if (estimate) hold(new Map([[from, estimate]]));
  }
}

let working = false;

async function work(): Promise<void> {
  if (working) return;
  working = true;
  try {
    while (await workOutNewest());
  } finally {
    working = false;
  }
}

/** The idle moment that there is still some time of, and the milliseconds that the last estimate took. */
let free: IdleDeadline | undefined;
let took = 0;

/** Works out what the newest practice lacks of which anything lacks; false where there is nothing to do now. */
async function workOutNewest(): Promise<boolean> {
  const summary = summaries.value.findLast((each) => lacking(each).length > 0);
  if (!summary) return false;
  const made = new Map<string, Estimate>();
  for (const { round, tally, pace } of lacking(summary)) {
    const from = madeFrom(round, tally, pace);
    const known = held.value.get(from);
    if (known && isCurrent(known, pace)) {
      made.set(from, known);
      continue;
    }
    if (!(free && free.timeRemaining() > took)) free = await idle();
    // The court comes first; the rest is for after the round, when the next entry asks again.
    if (roundRuns()) {
      hold(made);
      return false;
    }
    const start = performance.now();
    const estimate = estimateOf(round, tally, pace);
    took = performance.now() - start;
    if (estimate) made.set(from, estimate);
  }
  if (history.value?.includes(summary)) {
    const whole = withEstimates(
      summary,
      (round, tally) => made.get(madeFrom(round, tally, paceOf(summary, round))) ?? tally.estimate,
    );
    await keepEstimates(summary, whole);
  } else hold(made);
  return true;
}

function hold(made: ReadonlyMap<string, Estimate>): void {
  held.value = new Map([...held.value, ...made]);
}

interface Lack {
  round: PlayedRound;
  tally: PlayedTally;
  pace: Pace | undefined;
}

/** What of a practice has no estimate that this model would make. */
function lacking(summary: Summary): Lack[] {
  const isPacked = history.value?.includes(summary);
  return summary.rounds
    .filter((round) => isReady(summary, round))
    .flatMap((round) => {
      const pace = paceOf(summary, round);
      // What is packed lacks whatever its own record does not say, or it would be lost with the page.
      const known = (tally: PlayedTally) =>
        tally.estimate ?? (isPacked ? undefined : held.value.get(madeFrom(round, tally, pace)));
      return round.tallies
        .filter((tally) => isHeard(tally) && !isCurrent(known(tally), pace))
        .map((tally) => ({ round, tally, pace }));
    });
}
