import { library } from '../ledger.ts';
import { focusQuestion } from './focus-question.ts';
import { qualityWords } from './quality-words.ts';

/** What yes looks like and how the player is told: the coach's own words, or the language's. */
export function focusText(focus: string): { yes: string; told: string } {
  const own: Record<string, { yes: string; told: string }> = qualityWords.value.means;
  return library.value.foci.get(focus) ?? own[focus] ?? { yes: '', told: '' };
}

/** How often a focus was held, in words that help a player: "8 of 10 times back in place in time". */
export function timesHeld(focus: string, held: number, looks: number): string {
  const t = qualityWords.value;
  const own: Record<string, { held: string }> = t.means;
  const what = library.value.foci.has(focus) ? undefined : own[focus]?.held;
  return what === undefined
    ? t.looks.timesOwn(held, looks, focusQuestion(focus))
    : t.looks.times(held, looks, what);
}
