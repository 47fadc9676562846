import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { fromCsv, toCsv } from '../../../core/exchange/csv.ts';
import { TALLY_COLUMNS, type TallyColumn, tallyRows } from '../../../core/exchange/tallies.ts';
import type { Summary } from '../../../core/ledger/summary.ts';
import { estimatedRound, estimateWith } from '../figures/estimated.ts';
import { lobTerms, practiceWith, roundWith, serveTerms, termsWith } from '../made.ts';

const naming = {
  player: (id: string) => id.toUpperCase(),
  drill: (terms: { drill: string }) => `The ${terms.drill}`,
  focus: (id: string) => `${id}?`,
};
const table = (...summaries: Summary[]) => {
  const [, ...rows] = tallyRows(summaries, naming);
  return rows.map(
    (row) =>
      Object.fromEntries(TALLY_COLUMNS.map((column, at) => [column, row[at]])) as Record<
        TallyColumn,
        unknown
      >,
  );
};

/** The columns of the version before looks came, in their order. */
const EARLIER = [
  ...['date', 'practice', 'round', 'drill', 'family', 'counting_rule', 'set_size', 'player'],
  ...['partners', 'role', 'sets', 'touches_counted', 'live_seconds', 'sets_per_minute'],
  ...['late_marks', 'doubtful_marks', 'quality', 'touches_estimated', 'touches_low'],
  ...['touches_high', 'consistency', 'consistency_low', 'consistency_high'],
  ...['counted_by', 'drill_id'],
];

describe('the table of tallies', () => {
  test('keeps the place of every earlier column, and has the looks after them', () => {
    expect(TALLY_COLUMNS).toEqual([
      ...EARLIER,
      ...['focus', 'looks', 'held', 'round_looks', 'round_held'],
    ]);
  });

  test('has each player’s looks, and the round’s, beside the sets of every round with a focus', () => {
    const look = (player: string, second: number, saw: 'yes' | 'no' | 'unseen') => ({
      ...{ player, second, saw, focus: 'stance', by: 'phone' },
    });
    const round = {
      ...roundWith(0, termsWith(), [[['lin', 'otto'], 3]]),
      focus: 'stance',
      looks: [look('lin', 9, 'yes'), look('lin', 20, 'no'), look('otto', 30, 'unseen')],
    };
    const rows = table(
      practiceWith('2026-03-02', [round, roundWith(1, termsWith(), [[['lin', 'otto'], 3]])]),
    );
    expect(
      rows.map(({ focus, looks, held, round_looks, round_held }) => [
        ...[focus, looks, held, round_looks, round_held],
      ]),
    ).toEqual([
      ['stance?', 2, 1, 2, 1],
      ['stance?', 0, 0, 2, 1],
      [undefined, undefined, undefined, undefined, undefined],
      [undefined, undefined, undefined, undefined, undefined],
    ]);
  });

  test('of no practices is its header', () => {
    expect(tallyRows([], naming)).toEqual([[...TALLY_COLUMNS]]);
  });

  test('says of each player of a pair what they did, and with whom', () => {
    const round = roundWith(0, termsWith({ size: 5 }), [[['lin', 'otto'], 3]], 100);
    const [tally] = round.tallies;
    const marked = { ...round, tallies: [{ ...tally!, late: 2, doubtful: 1 }] };
    const [lin, otto] = table(practiceWith('2026-03-02', [marked]));
    expect(lin).toEqual({
      date: '2026-03-02',
      practice: 1,
      round: 1,
      drill: 'The rally',
      family: 'groundstrokes',
      counting_rule: 'in-a-row',
      set_size: 5,
      player: 'LIN',
      partners: 'OTTO',
      role: 1,
      sets: 3,
      touches_counted: 9,
      live_seconds: 100,
      sets_per_minute: 1.8,
      late_marks: 2,
      doubtful_marks: 1,
      quality: undefined,
      touches_estimated: undefined,
      touches_low: undefined,
      touches_high: undefined,
      consistency: undefined,
      consistency_low: undefined,
      consistency_high: undefined,
      counted_by: 'tapped',
      drill_id: 'rally',
    });
    expect(otto).toMatchObject({ player: 'OTTO', partners: 'LIN', role: 2, touches_counted: 6 });
  });

  test('gives a trio its two partners, its turns and two thirds of the clock', () => {
    const rows = table(
      practiceWith('2026-03-02', [roundWith(0, lobTerms, [[['a', 'b', 'c'], 4]])]),
    );
    expect(
      rows.map((row) => [row.partners, row.role, row.sets, row.live_seconds, row.sets_per_minute]),
    ).toEqual([
      ['B + C', 'turns', 3, 80, 2.25],
      ['A + C', 'turns', 3, 80, 2.25],
      ['A + B', 'turns', 2, 80, 1.5],
    ]);
  });

  test('gives each player their own on target', () => {
    const rows = table(
      practiceWith('2026-03-02', [roundWith(0, serveTerms, [[['a', 'b'], { a: 5, b: 2 }]])]),
    );
    expect(rows.map((row) => [row.player, row.sets, row.touches_counted])).toEqual([
      ['A', 5, 5],
      ['B', 2, 2],
    ]);
  });

  test('has a player’s part of all touches and the pair’s consistency, each with its limits', () => {
    const round = estimatedRound(
      roundWith(0, termsWith(), [[['a', 'b'], 4]]),
      estimateWith(56.13, 5, { success: { consistency: 0.9375, consistencySd: 0.0365 } }),
    );
    const [row] = table(practiceWith('2026-03-02', [round]));
    expect(row).toMatchObject({
      touches_counted: 20,
      touches_estimated: 28.1,
      touches_low: 25,
      touches_high: 31,
      consistency: 0.938,
      consistency_low: 0.888,
      consistency_high: 0.978,
    });
  });

  test('has on target each player’s own share', () => {
    const own = { a: { consistency: 0.25, consistencySd: 0 } };
    const round = estimatedRound(
      roundWith(0, serveTerms, [[['a', 'b'], { a: 5, b: 2 }]]),
      estimateWith(78, 9, { own }),
    );
    const [row] = table(practiceWith('2026-03-02', [round]));
    expect(row).toMatchObject({ consistency: 0.25, consistency_low: 0.25 });
  });

  test('has the touches of a count that the clock contradicts, and no consistency', () => {
    const { success: _, ...doubted } = estimateWith(300, 0, { implausible: true });
    const round = estimatedRound(roundWith(0, termsWith(), [[['a', 'b'], 30]]), doubted);
    const [row] = table(practiceWith('2026-03-02', [round]));
    expect(row).toMatchObject({
      touches_estimated: 150,
      consistency: undefined,
      consistency_low: undefined,
    });
  });

  test('has no rate where there was no live clock', () => {
    const [row] = table(practiceWith('2026-03-02', [roundWith(0, lobTerms, [[['a', 'b'], 1]], 0)]));
    expect(row).toMatchObject({ live_seconds: 0, sets_per_minute: undefined });
  });

  test('is sorted by date, round, pair and place, and numbers the practices of one date', () => {
    const pairs: [string[], number][] = [
      [['d', 'c'], 1],
      [['b', 'a'], 1],
    ];
    const late = practiceWith('2026-03-02', [
      roundWith(1, lobTerms, pairs),
      roundWith(0, lobTerms, pairs),
    ]);
    const evening = practiceWith(
      '2026-03-02',
      [roundWith(0, lobTerms, pairs.slice(0, 1))],
      'evening',
    );
    const early = practiceWith('2026-02-27', [roundWith(0, lobTerms, pairs.slice(0, 1))]);
    expect(
      table(late, evening, early).map((row) =>
        [row.date, row.practice, row.round, row.player].join(' '),
      ),
    ).toEqual([
      '2026-02-27 1 1 D',
      '2026-02-27 1 1 C',
      '2026-03-02 1 1 D',
      '2026-03-02 1 1 C',
      '2026-03-02 1 1 B',
      '2026-03-02 1 1 A',
      '2026-03-02 1 2 D',
      '2026-03-02 1 2 C',
      '2026-03-02 1 2 B',
      '2026-03-02 1 2 A',
      '2026-03-02 2 1 D',
      '2026-03-02 2 1 C',
    ]);
  });

  test('leaves the summaries in their order', () => {
    const summary = practiceWith('2026-03-02', [
      roundWith(1, lobTerms, []),
      roundWith(0, lobTerms, []),
    ]);
    tallyRows([summary], naming);
    expect(summary.rounds.map(({ ordinal }) => ordinal)).toEqual([1, 0]);
  });

  test('can be written as CSV and read again', () => {
    const rows = tallyRows(
      [practiceWith('2026-03-02', [roundWith(0, lobTerms, [[['=1+1', '"b", c'], 1]])])],
      naming,
    );
    expect(fromCsv(toCsv(rows))).toEqual(rows.map((row) => row.map((cell) => String(cell ?? ''))));
  });

  /** Names as hostile as a spreadsheet can be sent. */
  const name = fc.string({
    unit: fc.constantFrom(...'a;,"\'=+-@.1\t\r\n \u2212é', '\r\n', '1,5', '1.5'),
    minLength: 1,
    maxLength: 8,
  });
  const forms = [
    ['point', ',', (cell: string) => Number(cell)],
    ['comma', ';', (cell: string) => Number(cell.replace(',', '.'))],
  ] as const;

  test.each(forms)(
    'with a decimal %s is read by another reader (papaparse), which finds the separator by itself, with the same values',
    (decimal, separator, numberOf) => {
      fc.assert(
        fc.property(
          fc.tuple(name, name, name),
          fc.tuple(fc.nat(40), fc.integer({ min: 1, max: 3000 })),
          ([one, two, drill], [sets, tenths]) => {
            const round = estimatedRound(
              roundWith(0, termsWith(), [[['a', 'b'], sets]], tenths / 10),
              estimateWith(156.13, 5, { success: { consistency: 0.9375, consistencySd: 0.0365 } }),
            );
            const rows = tallyRows([practiceWith('2026-03-02', [round])], {
              player: (id) => (id === 'a' ? one : two),
              drill: () => drill,
              focus: (id) => id,
            });
            const { data, errors, meta } = Papa.parse<string[]>(toCsv(rows, decimal), {
              newline: '\r\n',
              skipEmptyLines: true,
            });
            expect(errors).toEqual([]);
            expect(meta.delimiter).toBe(separator);
            expect(data.length).toBe(rows.length);
            data.forEach((cells, row) => {
              expect(cells.length).toBe(TALLY_COLUMNS.length);
              cells.forEach((cell, column) => {
                const value = rows[row]?.[column];
                if (typeof value === 'number') expect(numberOf(cell)).toBe(value);
                // An apostrophe keeps a spreadsheet from taking the text for a formula.
                else expect([value ?? '', `'${value}`]).toContain(cell);
              });
            });
            expect(fromCsv(toCsv(rows, decimal)).length).toBe(rows.length);
          },
        ),
      );
    },
  );
});
