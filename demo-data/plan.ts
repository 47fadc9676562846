import { type Family, families } from '../core/drill/drill.ts';
import { starterDrills } from '../core/drill/starter-drills.ts';
import type { Plan } from '../core/round/block.ts';
import { USUAL_SECONDS } from '../core/round/clock.ts';
import type { Random } from './random.ts';

/** How often a coach goes back to one of a family's two favourites. */
const FAVOURITE = 0.6;
/** How often the coach asks for a rally twice as long, in which some pairs end without a set. */
const LONG = 0.25;
const LONGEST = 20;
/** From a horn to the next start: balls are picked up, players drink and change sides. */
const CHANGEOVER_SECONDS = 120;

/**
 * A block of five to seven rounds with a drill of each family, but for one that is left out.
 *
 * @param size a set size for every drill that allows one, or undefined for the coach's choice
 */
export function planBlock(
  leftOut: Family | undefined,
  size: number | undefined,
  random: Random,
): Plan {
  const chosen = families.filter((family) => family !== leftOut);
  const rounds = chosen.map(() => 1);
  for (let more = 5 + random.below(3) - chosen.length; more > 0; more -= 1) {
    const place = random.below(chosen.length);
    rounds[place] = (rounds[place] ?? 0) + 1;
  }
  const steps = chosen.map((family, place) => {
    const known = starterDrills.filter((drill) => drill.family === family);
    const drill = known[random.below(random.chance(FAVOURITE) ? 2 : known.length)]!;
    const mayDouble = drill.rule === 'in-a-row' && 2 * drill.size <= LONGEST;
    const long = mayDouble && random.chance(LONG) ? 2 * drill.size : undefined;
    const sizeable = drill.rule === 'in-a-row' || drill.rule === 'in-total';
    const set = (sizeable ? size : undefined) ?? long;
    return {
      drill: drill.id,
      rounds: rounds[place] ?? 1,
      partners: random.chance(0.5) ? ('turn' as const) : ('keep' as const),
      ...(set !== undefined && { size: set }),
    };
  });
  return { steps, seconds: USUAL_SECONDS, changeover: CHANGEOVER_SECONDS };
}
