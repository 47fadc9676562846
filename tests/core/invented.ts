import { addDays } from '../../core/calendar.ts';
import { type Drill, termsOf } from '../../core/drill/drill.ts';
import { starterDrills } from '../../core/drill/starter-drills.ts';
import type { Summary } from '../../core/ledger/summary.ts';
import type { Random } from '../../demo-data/random.ts';
import { practiceWith, roundWith } from './made.ts';

export const TODAY = '2026-03-20';

export const squadOf = (count: number): string[] =>
  Array.from({ length: count }, (_, at) => `p${String(at + 1).padStart(2, '0')}`);

/** So many starter drills, some twice, with half of their markers laid somewhere on a coarse grid. */
export function anyDrills(count: number, random: Random): Drill[] {
  return Array.from({ length: count }, (_, at) => {
    const drill = starterDrills[random.below(starterDrills.length)]!;
    const markers = drill.markers.map((marker) =>
      random.chance(0.5)
        ? marker
        : { ...marker, at: { x: random.below(4), y: 2 * random.below(6) - 5 } },
    );
    return { ...drill, id: `${drill.id}-${at}`, markers };
  });
}

/** So many practices before TODAY, two or three days apart, with rounds of some of the drills. */
export function anyHistory(
  drills: readonly Drill[],
  players: readonly string[],
  practices: number,
  random: Random,
): Summary[] {
  return Array.from({ length: practices }, (_, at) => {
    const date = addDays(TODAY, Math.floor((at - practices) * 2.5));
    const rounds = Array.from({ length: 1 + random.below(4) }, (_, ordinal) => {
      const drill = drills[random.below(drills.length)]!;
      const order = random.shuffled(players);
      const pairs = Array.from(
        { length: Math.floor(order.length / 2) },
        (_, pair) =>
          [
            order.slice(2 * pair, 2 * pair + 2),
            drill.rule === 'on-target' ? { [order[2 * pair]!]: 3 } : random.below(4),
          ] as [string[], number | Record<string, number>],
      );
      return roundWith(ordinal, termsOf(drill), pairs);
    });
    return practiceWith(date, rounds, `practice-${at}`);
  });
}
