import type { AllTouches } from '../../core/figures/all-touches.ts';
import { figureWords } from '../words/figure-words.ts';

/** All touches with their limits, as a cell of a table; undefined while they are not known. */
export function allTouches({ all }: AllTouches): string | undefined {
  const t = figureWords.value;
  return all && `${t.rounded(all.touches)} ${t.span(t.number(all.low), t.number(all.high))}`;
}
