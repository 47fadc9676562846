import { termsOf } from '../../core/drill/drill.ts';
import { starterDrills } from '../../core/drill/starter-drills.ts';
import type { Entry } from '../../core/ledger/entry.ts';
import { Pen } from '../browser/seed.ts';

const PAIRS = 6;
const LETTERS = 'ABCDEF';
/** A round that no measurement outlasts. */
const SECONDS = 600;

/**
 * A practice of six pairs, with a block of `planned` rounds, whose round number `rounds` runs; in each
 * round before it the pairs have made `marks` sets together.
 *
 * @param at when the running round began, in milliseconds since 1970
 */
export function courtEntries(
  at: number,
  date: string,
  { rounds, marks, planned }: { rounds: number; marks: number; planned: number },
): Entry[] {
  const drill = starterDrills.find(({ id }) => id === 'mini-rally');
  if (!drill) throw new Error('the drill is not there');
  const pairs = Array.from({ length: PAIRS }, (_, pair) => ({
    letter: LETTERS[pair] ?? '',
    players: [`player-${2 * pair}`, `player-${2 * pair + 1}`],
  }));
  const players = pairs.flatMap((pair) => pair.players);
  const practice = 'practice-measured';
  const pen = new Pen(at - 3_600_000);
  pen.write(
    ...players.map((player, i) => ({
      kind: 'player-added' as const,
      player,
      name: NAMES[i] ?? player,
    })),
    { kind: 'practice-opened', practice, date },
    ...players.map((player) => ({ kind: 'player-came' as const, practice, player })),
    {
      kind: 'block-planned',
      practice,
      plan: {
        steps: [{ drill: drill.id, rounds: planned, partners: 'keep' }],
        seconds: SECONDS,
        changeover: 60,
      },
    },
  );
  for (let ordinal = 0; ordinal < rounds; ordinal++) {
    const said = { practice, round: `round-${ordinal}` };
    const runs = ordinal === rounds - 1;
    if (runs) pen.at = at - 2_000;
    pen.write(
      { kind: 'round-set', ...said, ordinal, terms: termsOf(drill), seconds: SECONDS, pairs },
      { kind: 'clock-started', ...said },
    );
    if (runs) break;
    for (let mark = 0; mark < marks; mark++) {
      const pair = LETTERS[mark % PAIRS] ?? '';
      pen.write({ kind: 'mark', ...said, pair, second: mark + 1 });
    }
    pen.write({ kind: 'clock-stopped', ...said }, { kind: 'round-settled', ...said });
  }
  return pen.entries;
}

const NAMES = [
  ...['Pip', 'Juno', 'Odile', 'Bram', 'Taro', 'Wren'],
  ...['Ines', 'Milo', 'Suki', 'Arlo', 'Vega', 'Nils'],
];
