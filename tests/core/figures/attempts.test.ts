import { describe, expect, it } from 'vitest';
import { attempts } from '../../../core/figures/attempts.ts';

const P = 0.7;
const MOST = 11;

interface Ways {
  longest: number;
  reach?: number;
  showing?: number;
}

/** The same chances by trying every order of hits and misses. */
function byTrying(shots: number, misses: number, ways: Ways): { failed: number; goingOn: number } {
  const { longest, reach = 0, showing } = ways;
  let failed = 0;
  let goingOn = 0;
  for (let order = 0; order < 2 ** shots; order++) {
    const hits = Array.from({ length: shots }, (_, i) => (order >> i) % 2 === 1);
    const runs = [0];
    for (const hit of hits) {
      if (hit) runs.push(runs.pop()! + 1);
      else runs.push(0);
    }
    // A run as long as the longest attempt would have been a set.
    if (runs.length - 1 !== misses || Math.max(...runs) >= longest) continue;
    if (Math.max(...runs) < reach) continue;
    const open = runs.at(-1)!;
    const chance = P ** (shots - misses) * (1 - P) ** misses;
    if (open === 0) failed += chance;
    else if (showing === undefined || open === showing) goingOn += chance;
  }
  return { failed, goingOn };
}

describe('attempts', () => {
  it.each<Ways>([
    { longest: 4 },
    { longest: 1 },
    { longest: 20 },
    { longest: 5, reach: 2 },
    { longest: 4, reach: 3 },
    { longest: 6, reach: 1 },
    { longest: 4, showing: 0 },
    { longest: 4, showing: 1 },
    { longest: 4, showing: 3 },
    { longest: 4, showing: 5 },
    { longest: 6, reach: 3, showing: 2 },
    { longest: 6, reach: 3, showing: 4 },
  ])('are as likely as all their orders of hits and misses together, with %o', (ways) => {
    const table = attempts(P, ways.longest, MOST, ways);
    for (let misses = 0; misses <= MOST; misses++) {
      for (let shots = 0; shots <= MOST; shots++) {
        const tried = byTrying(shots, misses, ways);
        expect(table.failed(misses)[shots]).toBeCloseTo(tried.failed, 14);
        expect(table.goingOn(misses)[shots]).toBeCloseTo(tried.goingOn, 14);
      }
    }
  });

  it('count the ways to write a number as ordered parts, once their own chance is taken out', () => {
    // Stars and bars: 9 as four parts without an upper limit is C(8, 3).
    const chance = attempts(P, 9, 9).failed(4)[9]!;
    expect(chance / (P ** 5 * (1 - P) ** 4)).toBeCloseTo(56, 10);
  });

  it('may be asked for in any order', () => {
    const upwards = attempts(P, 5, 30);
    for (let misses = 0; misses < 6; misses++) upwards.failed(misses);
    expect(attempts(P, 5, 30).failed(6)).toEqual(upwards.failed(6));
    expect(attempts(P, 5, 30).goingOn(6)).toEqual(upwards.goingOn(6));
  });
});
