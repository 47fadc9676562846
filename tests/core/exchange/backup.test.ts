import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { endingLine, entryLine, headingLine } from '../../../core/exchange/backup.ts';
import {
  type BackupFault,
  BackupReader,
  type Brought,
  LONGEST_LINE,
} from '../../../core/exchange/backup-reader.ts';
import { makeEntry } from '../../../core/ledger/entry.ts';
import { foldPractice } from '../../../core/ledger/practice.ts';
import { nextStamp } from '../../../core/ledger/stamp.ts';
import { anyPractice } from '../practices.ts';
import { MORNING, PRACTICE, teller } from '../told.ts';

const tell = teller();
const added = tell({ kind: 'player-added', player: 'p1', name: 'Pip' });
const opened = tell({ kind: 'practice-opened', practice: PRACTICE, date: '2026-03-02' });
const came = tell({ kind: 'player-came', practice: PRACTICE, player: 'p1' });
const ENTRIES = [added, opened, came];

const fileOf = (entries: readonly (typeof added)[]) => [
  headingLine(),
  ...entries.map(entryLine),
  endingLine(entries.length),
];

function read(lines: readonly string[]): Brought | BackupFault {
  const reader = new BackupReader();
  for (const line of lines) {
    const fault = reader.read(line.replace(/\n$/, ''));
    if (fault) return fault;
  }
  return reader.end();
}

/** The file with one line in another's place, or before the line of that number where it is more. */
const withLine = (at: number, line: string) => fileOf(ENTRIES).with(at - 1, line);

describe('a file of entries', () => {
  test('brings what was written, by practice and in order', () => {
    expect(read(fileOf(ENTRIES.toReversed()))).toEqual({
      standing: [added],
      practices: new Map([[PRACTICE, [opened, came]]]),
      entries: 3,
    });
  });

  test('brings each entry once, however often it stands there', () => {
    const brought = read(fileOf([came, came, opened, came])) as Brought;
    expect(brought.practices.get(PRACTICE)).toEqual([opened, came]);
    expect(brought.entries).toBe(4);
  });

  test('hands on entries of kinds that this version does not know', () => {
    const foreign = {
      kind: 'spot-look',
      id: nextStamp('', MORNING, 'later-app'),
      at: 5,
      held: true,
    };
    expect(read(fileOf([foreign as never]))).toMatchObject({ standing: [foreign] });
  });

  test('is the same practice as before, whatever was told in it', () => {
    fc.assert(
      fc.property(anyPractice, (entries) => {
        const brought = read(fileOf(entries)) as Brought;
        const own = brought.practices.get(PRACTICE) as typeof entries;
        expect(foldPractice(own)).toEqual(foldPractice(entries));
      }),
    );
  });

  test('may come back from mail with a mark before it and blank lines after it', () => {
    const [heading, ...rest] = fileOf(ENTRIES);
    expect(read([`\uFEFF${heading}`, ...rest, '', ' '])).toMatchObject({ entries: 3 });
  });
});

describe('a file that is refused', () => {
  test.each<[string, string[], BackupFault]>([
    ['is empty', [], { line: 1, reason: 'heading' }],
    ['is something else', ['name,level', 'Pip,6'], { line: 1, reason: 'heading' }],
    ['has its heading missing', fileOf(ENTRIES).slice(1), { line: 1, reason: 'heading' }],
    [
      'is of a newer form',
      withLine(1, '{"rally-ledger":2}'),
      { line: 1, field: 'rally-ledger', reason: 'version' },
    ],
    ['was cut after a line', fileOf(ENTRIES).slice(0, -1), { line: 5, reason: 'cut' }],
    [
      'was cut within a line',
      fileOf(ENTRIES).slice(0, 2).concat('{"ki'),
      { line: 3, reason: 'json' },
    ],
    [
      'lost a line',
      fileOf(ENTRIES).toSpliced(2, 1),
      { line: 4, field: 'entries', reason: 'count' },
    ],
    ['goes on after its end', [...fileOf(ENTRIES), entryLine(came)], { line: 6, reason: 'after' }],
    ['has a line that is no record', withLine(3, '[1]'), { line: 3, reason: 'json' }],
    ['has a blank line inside', withLine(3, ''), { line: 3, reason: 'json' }],
    [
      'has a line without an end',
      withLine(3, ' '.repeat(LONGEST_LINE + 1)),
      { line: 3, reason: 'long' },
    ],
    [
      'has a field that is wrong',
      withLine(2, JSON.stringify({ ...added, name: '' })),
      { line: 2, field: 'name', reason: 'entry' },
    ],
    [
      'has a stamp that no clock makes',
      withLine(2, JSON.stringify({ ...added, id: 'zzzzzzzzz-zzz-forever00' })),
      { line: 2, field: 'id', reason: 'entry' },
    ],
    [
      'names a player like a part of the language',
      withLine(4, JSON.stringify({ ...came, player: '__proto__' })),
      { line: 4, field: 'player', reason: 'entry' },
    ],
  ])('%s: it names the place', (_, lines, fault) => {
    expect(read(lines)).toEqual(fault);
  });

  test.each(['__proto__', 'constructor', 'prototype', '\\u005f_proto__'])(
    'has a field called %s, at any depth',
    (name) => {
      const deep = `{"kind":"spot-look","id":"${added.id}","at":1,"more":[{"${name}":{"polluted":1}}]}`;
      const flat = `{"${name}":{"polluted":1},${entryLine(added).slice(1, -1)}`;
      const called = JSON.parse(`"${name}"`);
      expect(read(withLine(2, deep))).toEqual({
        line: 2,
        field: `more.0.${called}`,
        reason: 'reserved',
      });
      expect(read(withLine(2, flat))).toEqual({ line: 2, field: called, reason: 'reserved' });
      expect(({} as { polluted?: number }).polluted).toBeUndefined();
    },
  );

  test('has things within things without end', () => {
    const nest = '['.repeat(5_000) + ']'.repeat(5_000);
    const line = `{"kind":"spot-look","id":"${added.id}","at":1,"more":${nest}}`;
    expect(read(withLine(2, line))).toMatchObject({ line: 2, reason: 'deep' });
  });

  test('stands for nothing: an entry that this version makes is never refused', () => {
    const drill = {
      ...{ id: 'd1', family: 'volleys', rule: 'in-total', size: 12, perCourt: 1 },
      shots: Array.from({ length: 12 }, () => ({
        ...{ role: 0, stroke: 'volley' },
        from: { x: -19.123456789, y: 19.123456789 },
        to: { x: -19.123456789, y: 19.123456789 },
      })),
      roles: [
        { start: { x: 0, y: 5 }, recover: { x: 0, y: 5 } },
        { start: { x: 0, y: 5 }, recover: { x: 0, y: 5 } },
      ],
      markers: Array.from({ length: 12 }, () => ({ at: { x: 1.23456789, y: 2 }, use: 'lane' })),
      text: {
        ...{ name: 'é'.repeat(60), intention: '"'.repeat(240), cue: '\\'.repeat(120) },
        roles: ['é'.repeat(40), 'é'.repeat(40)],
      },
    };
    const entry = makeEntry({ kind: 'drill-written', drill } as never, added.id, MORNING);
    expect(read(fileOf([entry]))).toMatchObject({ standing: [entry] });
  });
});
