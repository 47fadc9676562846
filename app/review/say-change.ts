import { type Change, changeWord } from '../../core/figures/change.ts';
import { figureWords } from '../words/figure-words.ts';

/** What there is to say of a change: a word, and the number where there is enough to tell one. */
export function sayChange(change: Change): { word: string; ratio?: string } {
  const t = figureWords.value.review;
  const word = changeWord(change);
  return {
    word: t.changeWords[word],
    ...(word !== 'too-little' && { ratio: t.changeIs(change.ratio, change.low, change.high) }),
  };
}
