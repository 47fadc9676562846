import { thisPhone } from '../ledger.ts';
import { handoverWords } from '../words/handover-words.ts';

/** Letters of a phone's drawn name that tell it from the others of a club. */
const SHOWN = 3;

/** What a phone is called to people: nothing is known of whose it is. */
export function phoneName(phone: string): string {
  const t = handoverWords.value.phone;
  if (phone === '') return t.earlier;
  return phone === thisPhone() ? t.this : t.other(phone.slice(-SHOWN));
}
