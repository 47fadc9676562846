import type { CountingRule } from '../drill/drill.ts';
import type { Consistency } from '../ledger/summary.ts';
import { type Beta, consistencyInterval } from './consistency.ts';
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

/** What is known beforehand and what the stints add to it, with the number of those that told something. */
function addEvidence(stints: readonly Known[]): [Beta | undefined, number] {
  const telling = stints.filter(({ success }) => success);
  const [first] = telling;
  if (!first) return [undefined, 0];
  const prior = priorOf(first);
  const sum = { a: prior.a, b: prior.b };
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

function fromBeta({ a, b }: Beta): Consistency {
  const all = a + b;
  return { consistency: a / all, consistencySd: Math.sqrt((a * b) / (all * all * (all + 1))) };
}
