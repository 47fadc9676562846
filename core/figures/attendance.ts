import type { Summary } from '../ledger/summary.ts';

/** Whether anybody was present at a practice, or anything was played in it. */
export const wasHeld = ({ attended, rounds }: Pick<Summary, 'attended' | 'rounds'>): boolean =>
  attended.length + rounds.length > 0;

/**
 * Who was present on each date that had a practice, dates rising, players in the order in which they
 * came. Two practices of one date are one day; one in which nobody was and nothing was played is
 * none: names that were ticked on a day without a round.
 */
export function attendance(summaries: readonly Summary[]): Map<string, Set<string>> {
  const days = new Map<string, Set<string>>();
  const held = summaries.filter(wasHeld);
  for (const date of held.map((summary) => summary.date).toSorted()) days.set(date, new Set());
  for (const { date, attended } of held) {
    for (const player of attended) days.get(date)?.add(player);
  }
  return days;
}

/** On how many dates each player was there; one who never was is not in it. */
export function daysThere(summaries: readonly Summary[]): Map<string, number> {
  const days = new Map<string, number>();
  for (const player of [...attendance(summaries).values()].flatMap((there) => [...there])) {
    days.set(player, (days.get(player) ?? 0) + 1);
  }
  return days;
}
