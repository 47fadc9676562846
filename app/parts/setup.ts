import type { Drill } from '../../core/drill/drill.ts';
import { squadSettings } from '../ledger.ts';
import { cardWords } from '../words/card-words.ts';
import { instructionsOf } from '../words/drill-instructions.ts';
import { words } from '../words/words.ts';
import { squadLanes } from './squad-court.tsx';
import { whereabouts } from './whereabouts.ts';

/**
 * How the markers are laid: in the drill's own words where these hold, which speak of metres on the
 * full court, else one line a marker of the first lane: what it is for and where it lies.
 */
export function setupOf(drill: Drill): string[] {
  const { size, units } = squadSettings.value;
  const { setup } = instructionsOf(drill);
  if (size === 'full' && units === 'metres' && setup !== undefined) return [setup];
  const [own = drill] = squadLanes(drill);
  return own.markers.map(({ at, use }) =>
    words.value.named(cardWords.value.markerFor[use], whereabouts(at, size)),
  );
}
