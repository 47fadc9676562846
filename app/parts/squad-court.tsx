import type { Drill } from '../../core/drill/drill.ts';
import { lanesOn } from '../../core/drill/fit-court.ts';
import { squadSettings } from '../ledger.ts';
import { textOf } from '../words/drill-text.ts';
import { words } from '../words/words.ts';
import { CourtDrawing } from './court-drawing.tsx';
import { whereabouts } from './whereabouts.ts';

/** The lanes of a drill on a court of the squad's size. */
export const squadLanes = (drill: Drill): Drill[] => lanesOn(drill, squadSettings.value.size);

/** The drill in its first lane on a court of the squad's size, with the other lanes beside it. */
export function SquadCourt({ drill }: { drill: Drill }) {
  const [own = drill, ...others] = squadLanes(drill);
  return (
    <CourtDrawing
      drill={own}
      others={others}
      size={squadSettings.value.size}
      label={words.value.drill.drawn(textOf(drill).name)}
    />
  );
}

/**
 * How the markers are set out: in the drill's own words where these hold, which speak of metres on
 * the full court, else one line a marker of the first lane.
 */
export function setupOf(drill: Drill): string[] {
  const { size, units } = squadSettings.value;
  const { setup } = textOf(drill);
  return size === 'full' && units === 'metres' && setup !== undefined ? [setup] : markersOf(drill);
}

/** One line a marker of the first lane: what it is for and where it lies. */
export function markersOf(drill: Drill): string[] {
  const t = words.value.drill;
  const [own = drill] = squadLanes(drill);
  return own.markers.map(({ at, use }) =>
    words.value.named(t.markerFor[use], whereabouts(at, squadSettings.value.size)),
  );
}
