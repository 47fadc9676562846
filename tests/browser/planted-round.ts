import type { Page } from 'playwright/test';
import { termsOf } from '../../core/drill/drill.ts';
import { starterDrills } from '../../core/drill/starter-drills.ts';
import type { Entry, Saying } from '../../core/ledger/entry.ts';
import { Pen, plantEntries } from './seed.ts';

/** A Tuesday afternoon at the court. */
export const NOON = new Date('2026-11-24T12:00:00').getTime();

/** What a test wants to find on the court screen. */
export interface Planted {
  /** One list of names a pair. */
  pairs: readonly (readonly string[])[];
  /** The drill, by its id. */
  drill?: string;
  /** Whether its clock has started. */
  started?: boolean;
  /** What is looked at, and how often. */
  focus?: string;
  checks?: number;
  /** Whether all pairs call their number at the horn. */
  called?: boolean;
}

/** The entries of a practice whose first round stands as described, the last a second before `NOON`. */
function plantedRound({
  pairs,
  drill = 'mini-rally',
  started = true,
  focus,
  checks,
  called = false,
}: Planted): Entry[] {
  const known = starterDrills.find(({ id }) => id === drill);
  if (!known) throw new RangeError(`drill: ${drill}`);
  const practice = 'practice-planted';
  const round = 'round-planted';
  const lettered = pairs.map((names, index) => ({
    letter: 'ABCDEFGHIJKL'[index] ?? '',
    players: names.map((_, place) => `player-${index}-${place}`),
  }));
  const sayings: Saying[] = [
    ...lettered.flatMap(({ players }, index) =>
      players.map((player, place) => ({
        kind: 'player-added' as const,
        player,
        name: pairs[index]?.[place] ?? '',
      })),
    ),
    { kind: 'practice-opened', practice, date: '2026-11-24' },
    ...lettered.flatMap(({ players }) =>
      players.map((player) => ({ kind: 'player-came' as const, practice, player })),
    ),
    {
      kind: 'block-planned',
      practice,
      plan: { steps: [{ drill, rounds: 2, partners: 'keep' }], seconds: 120, changeover: 60 },
    },
    {
      kind: 'round-set',
      practice,
      round,
      ordinal: 0,
      terms: termsOf(known),
      seconds: 120,
      pairs: lettered,
      ...(called && { called: lettered.map(({ letter }) => letter) }),
      ...(focus !== undefined && { focus, checks }),
    },
  ];
  if (started) sayings.push({ kind: 'clock-started', practice, round });
  const pen = new Pen(NOON - sayings.length * 1_000);
  pen.write(...sayings);
  return pen.entries;
}

/** Opens the app on a court screen with that round on it. The page's clock must be installed. */
export async function openPlanted(page: Page, planted: Planted, address = 'court'): Promise<void> {
  await page.goto('./');
  await page.getByRole('heading', { level: 1 }).waitFor();
  await plantEntries(page, plantedRound(planted));
  await page.goto(`./#/${address}`);
  await page.reload();
}
