import type { Summary } from '../ledger/summary.ts';

/**
 * Who was there at any time of each date that had a practice, dates rising, players in the order
 * in which they came. Two practices of one date are one day.
 */
export function attendance(summaries: readonly Summary[]): Map<string, Set<string>> {
  const days = new Map<string, Set<string>>();
  for (const date of summaries.map((summary) => summary.date).toSorted()) {
    days.set(date, new Set());
  }
  for (const { date, attended } of summaries) {
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
