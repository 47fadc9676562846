import type { Terms } from '../drill/drill.ts';
import { type Summary, secondsOf } from '../ledger/summary.ts';
import { median } from '../median.ts';
import { isHeard, isHeardOf } from '../round/tally.ts';
import { shares, sumTouches } from './counted.ts';

/** Whether two rounds can be held beside each other: the same drill, counted in the same way. */
const alike = (a: Terms, b: Terms) => a.drill === b.drill && a.rule === b.rule && a.size === b.size;

/**
 * The sets that these players usually complete together in a round of so many seconds: the median
 * of their sets per live minute over earlier rounds of the same drill and size. Undefined where
 * they played none.
 *
 * @param history earlier practices, in any order
 * @param players a pair or a trio, in any order
 * @param seconds live clock to scale to
 * @throws RangeError for seconds that are negative or no number
 */
export function pairUsual(
  history: readonly Summary[],
  terms: Terms,
  players: readonly string[],
  seconds: number,
): number | undefined {
  if (!(seconds >= 0)) throw new RangeError(`seconds must be 0 or more, not ${seconds}`);
  const together = inAnyOrder(players);
  // Multiplied first, so that an equal round gives back exactly its own whole number.
  return median(
    history.flatMap(({ rounds }) =>
      rounds
        .filter((round) => alike(round.terms, terms))
        .flatMap((round) =>
          round.tallies
            .filter((tally) => isHeard(tally) && inAnyOrder(tally.pair.players) === together)
            .map((tally) => ({ sets: tally.sets, live: secondsOf(round, tally) }))
            .filter(({ live }) => live > 0)
            .map(({ sets, live }) => (sets * seconds) / live),
        ),
    ),
  );
}

/** The same for the same players in whatever order. */
const inAnyOrder = (players: readonly string[]) => JSON.stringify(players.toSorted());

/** A player's own day at one drill and size, beside the player's own earlier days. */
export interface OwnWork {
  drill: string;
  terms: Terms;
  /** Sets that the player took part in, all rounds together. */
  sets: number;
  /** Touches in those sets. */
  touches: number;
  /** The player's own live clock: two thirds of a round's in a trio. */
  seconds: number;
  /** The sets of the player's median earlier practice, scaled to today's seconds. */
  usual?: number;
  /** The sets of the player's best earlier practice, scaled to today's seconds. */
  best?: number;
  /** Whether today beat that best. */
  beaten?: boolean;
}

/**
 * What a player did today, drill by drill in the order of play, with the player's own usual and
 * own best at the same drill and size. One practice is one value, however many rounds it had.
 * `usual`, `best` and `beaten` are missing where no earlier practice had any live clock of it.
 *
 * @param history earlier practices, in any order; today's own is passed over
 */
export function ownDay(history: readonly Summary[], today: Summary, player: string): OwnWork[] {
  const now = workIn(today, player);
  const isAsked = (terms: Terms) => now.some((work) => alike(work.terms, terms));
  const earlier = history
    .filter(({ practice }) => practice !== today.practice)
    .flatMap((summary) => workIn(summary, player, isAsked))
    .filter(({ seconds }) => seconds > 0);
  return now.map((work) => {
    if (work.seconds === 0) return work;
    const scaled = earlier
      .filter(({ terms }) => alike(terms, work.terms))
      .map(({ sets, seconds }) => (sets * work.seconds) / seconds);
    const usual = median(scaled);
    if (usual === undefined) return work;
    const best = Math.max(...scaled);
    return { ...work, usual, best, beaten: work.sets > best };
  });
}

/** A player's work in one practice, by drill and size, as far as it is asked for. */
function workIn(
  summary: Summary,
  player: string,
  isAsked: (terms: Terms) => boolean = () => true,
): OwnWork[] {
  const works: OwnWork[] = [];
  for (const round of summary.rounds) {
    const { terms } = round;
    if (!isAsked(terms)) continue;
    // One who lost a partner in mid-round and went on with others is in two pairs of it.
    for (const tally of round.tallies) {
      if (!tally.pair.players.includes(player) || !isHeardOf(tally, player)) continue;
      const own = shares(terms, tally, round.seconds).find((share) => share.player === player)!;
      let work = works.find((before) => alike(before.terms, terms));
      if (!work) {
        work = { drill: terms.drill, terms, sets: 0, touches: 0, seconds: 0 };
        works.push(work);
      }
      work.sets += own.sets;
      work.touches += sumTouches(own.touches);
      work.seconds += secondsOf(round, tally) * own.time;
    }
  }
  return works;
}
