import type { OwnWork } from '../../core/figures/usual.ts';
import { measure } from './measure.ts';

/**
 * Today as a painted line, with the signs of the own usual and best where they stand on it; nothing
 * where there is nothing to stand beside, for then no length would mean anything.
 */
export function OwnMeasure({ work }: { work: OwnWork }) {
  const at = measure(work);
  if (!at) return null;
  const part = (share: number) => `${100 * share}%`;
  return (
    <div class="own-measure" aria-hidden="true">
      <div class="own-line" style={{ inlineSize: part(at.sets) }} />
      <i class="own-usual" style={{ insetInlineStart: part(at.usual) }} />
      <i class="own-best" style={{ insetInlineStart: part(at.best) }} />
    </div>
  );
}
