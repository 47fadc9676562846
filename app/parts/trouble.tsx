import { trouble } from '../ledger.ts';
import { practice } from '../practices.ts';
import { words } from '../words/words.ts';
import { HandPractice } from './hand-practice.tsx';
import { Notice } from './notice.tsx';

/** Why the phone cannot save, and a way to get the practice off it at once. */
export function Trouble() {
  if (!trouble.value) return null;
  return (
    <Notice as="fault">
      {words.value.trouble[trouble.value]} {practice.value && <HandPractice />}
    </Notice>
  );
}
