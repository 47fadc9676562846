import type { Drill } from '../../core/drill/drill.ts';
import { pairsWaiting } from '../coming-round.ts';
import { words } from '../words/words.ts';

/** How many pairs wait for a court at a drill, where any do. */
export function Waiting({ drill }: { drill: Drill }) {
  const pairs = pairsWaiting(drill);
  return pairs ? <span class="small">{words.value.courts.wait(pairs)}</span> : null;
}
