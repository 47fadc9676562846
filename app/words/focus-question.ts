import { library } from '../ledger.ts';
import { words } from './words.ts';

/** What is asked of one look at one player: the coach's own question, or the language's. */
export function focusQuestion(focus: string): string {
  const own: Record<string, string> = words.value.foci;
  return library.value.foci.get(focus)?.question ?? own[focus] ?? focus;
}
