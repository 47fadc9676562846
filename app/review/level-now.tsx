import type { Level } from '../../core/figures/level.ts';
import { Explained } from '../parts/explained.tsx';
import { figureWords } from '../words/figure-words.ts';

/** A level with the limits that hold it four times in five. */
export function LevelNow({ level: { share, low, high } }: { level: Level }) {
  const t = figureWords.value;
  return (
    <Explained of="level">
      <b class="number">{t.percent(share)}</b> {t.span(t.percent(low), t.percent(high))}
    </Explained>
  );
}
