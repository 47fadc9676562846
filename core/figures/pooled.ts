import type { CountingRule } from '../drill/drill.ts';
import type { Consistency } from '../ledger/summary.ts';
import { type Beta, betaOf, carriedOver, consistencyInterval } from './consistency.ts';
import { evidence, SHARE_PRIOR } from './evidence.ts';
import type { Stint } from './stints.ts';

/** A consistency over some stints, and the limits that hold it four times in five. */
export interface PooledConsistency extends Consistency {
  low: number;
  high: number;
  /** Stints that it rests on. */
  rounds: number;
}

type Known = { terms: { rule: CountingRule }; success?: Stint['success'] };

const priorOf = ({ terms }: Known): Beta =>
  terms.rule === 'on-target' ? SHARE_PRIOR.onTarget : SHARE_PRIOR.back;

/**
 * One consistency for several stints, as if it were the same in all of them: what each adds to what
 * was known before is added up, so that what was known before is in it once. Stints on target and
 * others are of two kinds; of a mixture the kind of the first is taken and the others are passed
 * over. Undefined where no stint has a consistency.
 */
export function pooledConsistency(stints: readonly Known[]): PooledConsistency | undefined {
  const [beta, rounds] = addEvidence(stints);
  if (!beta) return undefined;
  const known = fromBeta(beta);
  return { ...known, ...consistencyInterval(known), rounds };
}

/** The same without its limits, which take longer than all the rest. */
export function pooledMean(stints: readonly Known[]): number | undefined {
  const [beta] = addEvidence(stints);
  return beta && fromBeta(beta).consistency;
}

/**
 * What practices, oldest first, say of a pair's consistency in the next one: each starts from what
 * the ones before it say, carried over, and adds its own. Undefined where none has a consistency.
 */
export function comingConsistency(
  practices: readonly (readonly Known[])[],
): Consistency | undefined {
  let known: Consistency | undefined;
  for (const stints of practices) {
    const [beta] = addEvidence(stints, known && betaFrom(carriedOver(known)));
    if (beta) known = fromBeta(beta);
  }
  return known && carriedOver(known);
}

/** What was known and what the stints add to it, with the number of those that told something. */
function addEvidence(stints: readonly Known[], before?: Beta): [Beta | undefined, number] {
  const telling = stints.filter(({ success }) => success);
  const [first] = telling;
  if (!first) return [before, 0];
  const prior = priorOf(first);
  const { a, b } = before ?? prior;
  const sum = { a, b };
  let rounds = 0;
  for (const stint of telling) {
    if (!stint.success || priorOf(stint) !== prior) continue;
    const { hits, misses } = evidence(stint.success, prior);
    sum.a += hits;
    sum.b += misses;
    rounds += 1;
  }
  return [sum, rounds];
}

const betaFrom = ({ consistency, consistencySd }: Consistency): Beta =>
  betaOf(consistency, consistencySd);

function fromBeta({ a, b }: Beta): Consistency {
  const all = a + b;
  return { consistency: a / all, consistencySd: Math.sqrt((a * b) / (all * all * (all + 1))) };
}
