import type { Page } from 'playwright/test';
import { addDays } from '../../core/calendar.ts';
import { termsOf } from '../../core/drill/drill.ts';
import { starterDrills } from '../../core/drill/starter-drills.ts';
import type { Sight } from '../../core/round/look.ts';
import { NOON } from './planted-round.ts';
import { Pen, plantEntries } from './seed.ts';

export const NAMES = ['Pip', 'Juno', 'Odile', 'Bram', 'Maximilienne', 'Taro'];
const DAY = 86_400_000;
const TODAY = '2026-11-24';
const playerId = (at: number) => `player-${at}`;

/**
 * Eight weeks of two practices each, in which a focus slips from four of five to half of the looks
 * and one is held as before; overheads and serves; effort of all but the last practice. The last
 * practice was today, and a second phone watched it.
 */
export async function openLookedAt(page: Page, address = ''): Promise<void> {
  const players = NAMES.map((_, at) => playerId(at));
  const pen = new Pen(NOON - 70 * DAY, 'phone-one-page-1');
  const other = new Pen(NOON, 'phone-two-page-1');
  pen.write(
    ...players.map((player, at) => ({
      kind: 'player-added' as const,
      player,
      name: NAMES[at] ?? '',
    })),
    {
      kind: 'focus-written',
      focus: { id: 'own-focus', question: 'Racket up?', yes: 'Tip above the hand.', told: 'Up!' },
    },
  );
  const drills = ['mini-rally', 'lob-and-overhead', 'serve-return-next'].map((id) => {
    const drill = starterDrills.find((each) => each.id === id);
    if (!drill) throw new RangeError(`drill: ${id}`);
    return termsOf(drill);
  });
  let lot = 4242;
  for (let held = 0; held < 16; held++) {
    const daysBefore = 3.5 * (15 - held);
    const date = addDays(TODAY, -Math.ceil(daysBefore));
    const practice = `practice-${held}`;
    pen.at = NOON - Math.ceil(daysBefore) * DAY - 3_600_000;
    pen.write({ kind: 'practice-opened', practice, date });
    for (const player of players) pen.write({ kind: 'player-came', practice, player });
    for (const [ordinal, terms] of drills.entries()) {
      const round = `round-${held}-${ordinal}`;
      const of = { practice, round };
      const focus = ordinal === 1 ? 'own-focus' : 'recovery';
      pen.write(
        {
          ...{ kind: 'round-set', ...of, ordinal, terms, seconds: 120, focus, checks: 12 },
          pairs: [0, 1, 2].map((pair) => ({
            letter: 'ABC'[pair] ?? '',
            players: players.slice(2 * pair, 2 * pair + 2),
          })),
        },
        { kind: 'clock-started', ...of },
      );
      const counted = ordinal + 2 + Math.floor(held / 4);
      for (const pair of ['A', 'B', 'C']) {
        const player = terms.rule === 'on-target' ? players['ABC'.indexOf(pair) * 2] : undefined;
        for (let set = 1; set <= counted; set++) {
          pen.write({
            ...{ kind: 'mark', ...of, pair, second: set * 12 },
            ...(player !== undefined && { player }),
          });
        }
      }
      for (let at = 0; at < 12; at++) {
        const player = players[(at + held) % 6] ?? '';
        // Four of five are held at first, and half of them later; of the own focus always three of four.
        lot = (lot * 48271) % 2147483647;
        const share = ordinal === 1 ? 0.75 : held < 8 ? 0.8 : 0.5;
        const saw: Sight = lot / 2147483647 < share ? 'yes' : 'no';
        const look = { ...of, player, focus, second: 6 + 4 * at };
        pen.write({ kind: 'look', ...look, saw });
        if (held === 15) {
          other.at = pen.at;
          other.write({ kind: 'look', ...look, saw: at % 3 === 0 ? 'no' : 'yes' });
        }
      }
      pen.at += 120_000;
      pen.write({ kind: 'round-settled', ...of });
    }
    if (held === 15) break;
    for (const [at, player] of players.entries()) {
      pen.write({ kind: 'effort-told', practice, player, effort: 3 + (at % 5), minutes: 75 });
    }
    pen.write({ kind: 'practice-closed', practice });
  }
  await page.goto('./');
  await page.getByRole('heading', { level: 1 }).waitFor();
  await plantEntries(page, [...pen.entries, ...other.entries]);
  await page.goto(`./#/${address}`);
  await page.reload();
}
