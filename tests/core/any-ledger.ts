import { addDays } from '../../core/calendar.ts';
import { termsOf } from '../../core/drill/drill.ts';
import { starterDrills } from '../../core/drill/starter-drills.ts';
import { estimateTally } from '../../core/figures/estimate.ts';
import type { Estimate, PlayedTally, Summary } from '../../core/ledger/summary.ts';
import { pairUp } from '../../core/round/pairs.ts';
import { type Random, randomFrom } from '../../demo-data/random.ts';
import { practiceWith } from './made.ts';

/** Ten seasons of two hundred practices, with two rounds each. */
const MOST_PRACTICES = 2_000;
const SECONDS = 120;
/** The date of the last practice of every ledger. */
export const LAST = '2026-03-04';

const estimates = new Map<string, Estimate>();

/** Counts as they come, senseless ones among them; the same ones always say the same. */
function tallyOf(
  terms: ReturnType<typeof termsOf>,
  players: string[],
  random: Random,
): PlayedTally {
  const onTarget = terms.rule === 'on-target';
  const own = players.map(() => random.below(random.chance(0.05) ? 60 : 12));
  const sets = onTarget ? own.reduce((sum, n) => sum + n, 0) : own[0]!;
  const tally: PlayedTally = {
    pair: { letter: 'A', players },
    sets,
    ...(onTarget && {
      byPlayer: Object.fromEntries(players.map((player, at) => [player, own[at]!])),
    }),
    ...{ times: [], late: 0, doubtful: 0, open: 0 },
  };
  if (random.chance(0.05)) return { ...tally, sets: 0, unheard: players };
  const key = JSON.stringify([terms.drill, sets, onTarget ? own : players.length]);
  const known = estimates.get(key) ?? estimateTally(terms, SECONDS, tally, undefined);
  estimates.set(key, known);
  // Kept for other players with the same counts.
  const shares = Object.values(known.own ?? {});
  return {
    ...tally,
    estimate: known.own
      ? { ...known, own: Object.fromEntries(players.map((player, at) => [player, shares[at]!])) }
      : known,
  };
}

/**
 * A ledger by chance, from one tally (the first) to ten seasons; the same number gives the same one.
 *
 * @returns its practices, the oldest first, and everybody who may have played in them
 */
export function anyLedger(seed: number): { summaries: Summary[]; players: string[] } {
  const random = randomFrom(seed);
  const players = Array.from({ length: 2 + random.below(13) }, (_, at) => `p${at + 10}`);
  // Mostly small ones, for there is the least to go by; the first ledger is one tally.
  const practices = seed === 0 ? 1 : Math.ceil(MOST_PRACTICES ** (random.unit() ** 3));
  const rounds = seed === 0 ? 1 : 1 + random.below(practices > 100 ? 2 : 6);
  let date = LAST;
  const summaries = Array.from({ length: practices }, (_, at): Summary => {
    date = addDays(date, -(random.chance(0.03) ? 40 : random.below(4)));
    const here = players.filter(() => random.chance(0.8));
    const playing = here.length < 2 || seed === 0 ? players.slice(0, 2) : here;
    const summary = practiceWith(
      date,
      Array.from({ length: rounds }, (_, ordinal) => {
        const terms = termsOf(starterDrills[random.below(starterDrills.length)]!);
        return {
          ...{ id: `${at}-${ordinal}`, ordinal, terms, seconds: SECONDS, settled: true },
          tallies: pairUp(random.shuffled(playing)).map(({ letter, players: own }) => {
            const tally = tallyOf(terms, own, random);
            return { ...tally, pair: { ...tally.pair, letter } };
          }),
        };
      }),
      `practice-${at}`,
    );
    return random.chance(0.02) ? { ...summary, struck: true, rounds: [] } : summary;
  });
  return { summaries: summaries.reverse(), players };
}
