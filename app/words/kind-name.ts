import type { KindOfWork } from '../../core/figures/review.ts';
import { figureWords } from './figure-words.ts';
import { words } from './words.ts';

/** What people call a kind of work: "Volleys", "Volleys (on target)". */
export const kindName = ({ family, onTarget }: KindOfWork): string => {
  const name = words.value.families[family];
  return onTarget ? `${name} (${figureWords.value.onTarget})` : name;
};
