import { effect, signal } from '@preact/signals';
import * as z from 'zod/mini';
import { spoken } from '../words/languages.ts';

/**
 * How this phone shows things: none of it is part of the ledger, and losing it loses no count.
 */
const Prefs = z.object({
  language: z.catch(z.enum(['phone', ...spoken]), 'phone'),
  theme: z.catch(z.enum(['phone', 'light', 'dark']), 'phone'),
  sound: z.catch(z.enum(['off', 'quiet', 'loud']), 'loud'),
  /** A quiet click at each count. */
  click: z.catch(z.boolean(), true),
  /** The names of the next pairs are said as their card comes. */
  sayPairs: z.catch(z.boolean(), false),
  /** The hand whose thumb counts. */
  hand: z.catch(z.enum(['right', 'left']), 'right'),
  /** Single keys count and run the clock. */
  keys: z.catch(z.boolean(), true),
  /** The invented squad is shown instead of the coach's own ledger. */
  demo: z.catch(z.boolean(), false),
  /** The page a player was handed; until the coach takes the phone back there is no other. */
  handedTo: z.catch(z.optional(z.string()), undefined),
  initials: z.catch(z.boolean(), false),
  /** The decimal sign of a table that leaves this phone; undefined until one was chosen. */
  decimals: z.catch(z.optional(z.enum(['point', 'comma'])), undefined),
});
export type Prefs = z.infer<typeof Prefs>;

const KEY = 'rally-ledger';

function stored(): unknown {
  try {
    // Of the sound an earlier version knew on and off only.
    return JSON.parse(localStorage.getItem(KEY) ?? '{}', (name, value) =>
      name === 'sound' && value === false ? 'off' : value,
    );
  } catch {
    return {}; // Storage is refused or the text is damaged: the phone's own ways serve.
  }
}

const parsed = Prefs.safeParse(stored());
export const prefs = signal<Prefs>(parsed.success ? parsed.data : Prefs.parse({}));

export function setPrefs(change: Partial<Prefs>): void {
  prefs.value = { ...prefs.value, ...change };
}

effect(() => {
  try {
    localStorage.setItem(KEY, JSON.stringify(prefs.value));
  } catch {
    // Refused storage: the choice holds until the page is closed.
  }
});
