import { daysBetween } from '../calendar.ts';
import type { CourtSize } from '../court/court.ts';
import type { Drill, Family, Stroke } from '../drill/drill.ts';
import { OVERDUE } from '../figures/coverage.ts';
import type { SetlessCounts } from '../figures/too-hard.ts';
import type { Summary } from '../ledger/summary.ts';
import type { Plan, Step } from '../round/block.ts';
import { MOST_STEP_ROUNDS, pricesOf, rolesDiffer, strokesOfRoles, weights } from './block-cost.ts';
import { cheapestBlocks } from './cheapest-blocks.ts';
import { type WhatIsDue, whatIsDue } from './what-is-due.ts';

/**
 * The one thing that speaks most for a step, for a screen to put into words: its family was never
 * practised, or not for so many days; a focus slips that was looked at in this drill; the drill is too
 * hard as it stands; or players who are here have not struck one of its strokes
 * for too long (`days` since anyone in the squad did); or else every family has its place.
 */
export type Reason =
  | { why: 'never'; family: Family }
  | { why: 'overdue'; family: Family; days: number }
  | { why: 'slipping'; focus: string }
  | ({ why: 'hard' } & SetlessCounts)
  | { why: 'role'; stroke: Stroke; players: string[]; days?: number }
  | { why: 'balance'; family: Family; days?: number };

export interface ProposedStep {
  step: Step;
  family: Family;
  reason: Reason;
  /** Whole days since this drill was last played; undefined where it never was. */
  drillDays?: number;
  /** Markers that are laid, taken up or moved on a court before it; 0 for the first step. */
  markersMoved: number;
}

export interface Proposal {
  plan: Plan;
  /** Beside `plan.steps`, in their order. */
  steps: ProposedStep[];
  /** See proposal-cost.ts. */
  cost: number;
}

/**
 * Most rounds that are proposed: half an hour of two minutes each with half a minute between them.
 * Finding the best of more would keep a phone busy for seconds.
 */
export const MOST_PROPOSED_ROUNDS = 12;

/**
 * The rounds of so many seconds that fit into so many minutes, the changeovers between them
 * included.
 */
export const roundsThatFit = (minutes: number, seconds: number, changeover: number): number =>
  Math.floor((minutes * 60 + changeover) / (seconds + changeover));

/**
 * The block that costs least for those who are here (see proposal-cost.ts), out of all that fill
 * the time: as many rounds as fit, at most twelve. Partners change with every drill, and with every
 * round of it unless its roles are unlike: then the roles turn instead. The same ledger gives the
 * same proposal.
 *
 * @param minutes for the whole block; what remains is less than a round with its changeover
 * @param seconds of a round; `changeover`: from a horn to the next start
 * @param here players who are here; nobody where that is not known
 * @param courts left out where not known: then there is room for everyone
 * @param size of the courts; full where left out
 * @param drills those to choose from
 * @param summaries in any order; what is later than `today` is passed over
 * @param today YYYY-MM-DD
 * @param sizeOf the size to play a drill in where its own does not suit those who are here
 * @param skip 0 for the best, 1 for the next best set of drills and rounds, and so on
 * @returns undefined where no round fits, there is no drill, or there are no more blocks
 * @throws RangeError that names a minutes, seconds, changeover, courts or skip that makes no sense
 */
export function proposeBlock({
  minutes,
  seconds,
  changeover,
  here,
  courts,
  size = 'full',
  drills,
  summaries,
  today,
  sizeOf,
  skip = 0,
}: {
  minutes: number;
  seconds: number;
  changeover: number;
  here: readonly string[];
  courts?: number | undefined;
  size?: CourtSize;
  drills: readonly Drill[];
  summaries: readonly Summary[];
  today: string;
  sizeOf?: (drill: Drill) => number | undefined;
  skip?: number;
}): Proposal | undefined {
  must('minutes', minutes, minutes >= 0 && Number.isFinite(minutes));
  must('seconds', seconds, seconds > 0 && Number.isFinite(seconds));
  must('changeover', changeover, changeover >= 0 && Number.isFinite(changeover));
  must('courts', courts, courts === undefined || (Number.isInteger(courts) && courts >= 1));
  must('skip', skip, Number.isInteger(skip) && skip >= 0);
  const most = roundsThatFit(minutes, seconds, changeover);
  const rounds = Math.min(most, MOST_PROPOSED_ROUNDS, MOST_STEP_ROUNDS * drills.length);
  if (rounds < 1) return undefined;

  const due = whatIsDue(summaries, today, here);
  const prices = pricesOf(drills, rounds, Math.floor(here.length / 2), courts, size, due);
  const found = nth(cheapestBlocks(prices), skip);
  if (!found) return undefined;
  const steps = found.block.map(({ drill, rounds }, at): ProposedStep => {
    const chosen = drills[drill]!;
    const before = found.block[at - 1];
    const drillDays = due.drillDays(chosen.id);
    const fitting = sizeOf?.(chosen);
    return {
      step: {
        ...{ drill: chosen.id, rounds },
        ...(rolesDiffer(chosen) ? { partners: 'keep', renew: true } : { partners: 'turn' }),
        ...(fitting !== undefined && { size: fitting }),
      },
      family: chosen.family,
      reason: reasonFor(chosen, due, today),
      ...(drillDays !== undefined && { drillDays }),
      markersMoved: before ? prices.move[before.drill]![drill]! / weights.marker : 0,
    };
  });
  return {
    plan: {
      ...{ steps: steps.map(({ step }) => step), seconds, changeover },
      ...(due.slipping !== undefined && { focus: due.slipping }),
    },
    steps,
    cost: found.cost,
  };
}

/** What speaks most for a drill. A squad without any history has no reason but balance. */
function reasonFor(drill: Drill, due: WhatIsDue, today: string): Reason {
  const { family } = drill;
  const last = due.squad.families[family];
  const days = last === undefined ? undefined : daysBetween(last, today);
  if (days === undefined && due.squad.first !== undefined) return { why: 'never', family };
  if (days !== undefined && days > OVERDUE.after) return { why: 'overdue', family, days };
  const focus = due.slips(drill.id);
  if (focus !== undefined) return { why: 'slipping', focus };
  const hard = due.hard(drill);
  if (hard) return { why: 'hard', ...hard };
  return (
    roleReason(drill, due, today) ?? {
      why: 'balance',
      family,
      ...(days !== undefined && { days }),
    }
  );
}

/** The stroke of a drill that most of those here have gone without for too long, if any has. */
function roleReason(drill: Drill, due: WhatIsDue, today: string): Reason | undefined {
  const found = [...new Set(strokesOfRoles(drill).flat())].map((stroke) => ({
    stroke,
    players: due.here
      .filter(({ last }) => {
        const since = last.strokes[stroke] ?? last.first;
        return since !== undefined && daysBetween(since, today) > OVERDUE.after;
      })
      .map(({ player }) => player),
  }));
  const [most] = found.sort((a, b) => b.players.length - a.players.length);
  if (!most || most.players.length === 0) return undefined;
  const last = due.squad.strokes[most.stroke];
  return { why: 'role', ...most, ...(last !== undefined && { days: daysBetween(last, today) }) };
}

function nth<T>(all: Iterable<T>, skip: number): T | undefined {
  let at = 0;
  for (const one of all) {
    if (at === skip) return one;
    at += 1;
  }
  return undefined;
}

function must(name: string, value: number | undefined, isSo: boolean): void {
  if (!isSo) throw new RangeError(`${name} makes no sense: ${value}`);
}
