import { readFileSync } from 'node:fs';
import { describe, expect, test, vi } from 'vitest';
import { type TallyColumn, tallyRows } from '../../core/exchange/tallies.ts';
import type { Coach } from './phone/coach.ts';
import { playing } from './phone/playing.ts';
import { told } from './phone/told.ts';

const { phone } = playing();

async function four(): Promise<Coach> {
  const coach = await phone('2026-03-17 18:00');
  await coach.squad('Ada', 'Bo', 'Cy', 'Di');
  await coach.come('Ada', 'Bo', 'Cy', 'Di');
  await coach.plan(['mini-rally', 2]);
  return coach;
}

/**
 * The records of a phone, and the table of tallies that it showed of them, written by the version of
 * 3d47d0d itself: a packed practice of a pair and a trio with marks taken back, late, judged and put
 * right, a tempo check, a round stopped early and passed over; and one that is under way.
 */
const earlier = JSON.parse(
  readFileSync(new URL('fixtures/earlier-version.json', import.meta.url), 'utf8'),
) as { now: number; records: [string, unknown][]; rows: unknown[][] };

describe('a ledger of the version before', () => {
  /** The table as that version had it; its columns came first, and new ones went to the end. */
  function table({ app }: Coach) {
    const same = (id: string) => id;
    const naming = { player: same, focus: same, drill: ({ drill }: { drill: string }) => drill };
    const [heading = [], ...rows] = tallyRows(app.estimates.estimated.value, naming);
    const columns = earlier.rows[0] as TallyColumn[];
    expect(heading.slice(0, columns.length)).toEqual(columns);
    const cells = (row: unknown[]) => row.slice(0, columns.length).map((cell) => cell ?? null);
    return rows.map(cells);
  }

  async function opened(): Promise<Coach> {
    const coach = await phone('2026-03-18 12:00');
    await coach.phone.kill(coach.page);
    for (const key of (await coach.phone.records()).keys()) await coach.phone.remove(key);
    for (const [key, record] of earlier.records) await coach.phone.put(key, record);
    coach.phone.setClock(earlier.now);
    coach.page = await coach.phone.open();
    await coach.phone.worked(coach.page);
    return coach;
  }

  test('opens, and shows the same figures as that version did', async () => {
    const coach = await opened();
    expect(coach.app.ledger.damaged.value).toEqual([]);
    expect(table(coach)).toEqual(earlier.rows.slice(1));
    expect(coach.practice?.date).toBe('2026-03-18');
  });

  test('shows them once both practices are packed by this version, and opened again', async () => {
    const coach = await opened();
    await coach.settle();
    await coach.phone.sleepUntil('2026-03-19 18:00');
    coach.page = await coach.phone.restart();
    await coach.phone.worked(coach.page);
    expect(coach.app.practices.history.value).toHaveLength(2);
    // The last round was not settled then, so that its touches were not worked out yet.
    const counted = (row: unknown[]) => row.slice(0, 17);
    expect(table(coach).map(counted)).toEqual(earlier.rows.slice(1).map(counted));
    const worked = earlier.rows.slice(1).filter((row) => row[17] !== null);
    expect(table(coach).slice(0, worked.length)).toEqual(worked);
  });

  test('can be put right, the count of a phone that it did not name too', async () => {
    const coach = await opened();
    const [round] = coach.practice?.rounds ?? [];
    const before = round?.tallies[0]?.sets ?? 0;
    await coach.phone.do(() => coach.app.actions.correct(round!, 'A', 1));
    expect(coach.practice?.rounds[0]?.tallies[0]?.sets).toBe(before + 1);
    await coach.phone.do(() => coach.app.actions.correct(coach.practice!.rounds[0]!, 'A', -1));
    expect(coach.practice?.rounds[0]?.tallies[0]?.sets).toBe(before);
  });
});

describe('what is appended', () => {
  test('is shown at once, and is on the disk before it no longer counts as unsaved', async () => {
    const coach = await four();
    await coach.start();
    await coach.phone.pass(10_000);
    coach.app.actions.count(coach.round, 'A');
    expect(coach.round.tallies[0]?.sets).toBe(1);
    expect(coach.app.ledger.unsaved.value.size).toBe(1);
    const [id] = coach.app.ledger.unsaved.value;
    await coach.phone.do(() => {});
    expect(coach.app.ledger.unsaved.value.size).toBe(0);
    const keys = [...(await coach.phone.records()).keys()];
    expect(keys.filter((key) => key.endsWith(id!))).toHaveLength(1);
  });

  test('while the phone is full is held in order, said, and saved once there is room', async () => {
    const coach = await four();
    await coach.start();
    const { ledger } = coach.app;
    const full = vi
      .spyOn(ledger.store, 'save')
      .mockRejectedValue(new DOMException('no room', 'QuotaExceededError'));
    await coach.tap(['A', 'B', 'A'], 5);
    expect(ledger.trouble.value).toBe('full');
    expect(ledger.unsaved.value.size).toBe(3);
    expect(coach.round.tallies[0]?.sets).toBe(2);
    full.mockRestore();
    await coach.phone.pass(6_000);
    expect(ledger.trouble.value).toBeUndefined();
    expect(ledger.unsaved.value.size).toBe(0);
    coach.page = await coach.phone.restart();
    expect(coach.round.tallies.map(({ sets }) => sets)).toEqual([2, 1]);
  });

  test('by a phone in many pages is all of one phone, which the next page knows again', async () => {
    const coach = await four();
    await coach.start();
    await coach.tap(['A'], 10);
    const phoneOf = () => coach.round.phones.A;
    const first = phoneOf();
    expect(first).toMatch(/^[\w-]{10}$/);
    coach.page = await coach.phone.restart();
    await coach.tap(['A'], 10);
    expect(phoneOf()).toBe(first);
    expect(coach.round.tallies[0]).toMatchObject({ sets: 2 });
    expect(coach.round.tallies[0]?.also).toBeUndefined();
  });
});

describe('two windows of one phone', () => {
  test('show each other’s marks, and figures of both are the same', async () => {
    const coach = await four();
    const other = await coach.phone.open();
    await coach.start();
    await coach.tap(['A', 'B']);
    const round = () => other.app.actions.lastRound(other.app.practices.practice.value)!;
    await coach.phone.pass(9_000);
    await coach.phone.do(() => other.app.actions.count(round(), 'A'));
    expect(coach.round.tallies.map(({ sets }) => sets)).toEqual([2, 1]);
    expect(round().tallies.map(({ sets }) => sets)).toEqual([2, 1]);
    await coach.horn();
    await coach.settle();
    expect(told(other)).toMatchObject({ sets: told(coach.page).sets, own: told(coach.page).own });
  });

  test('show a past practice as it was put right in either, also once it is packed again', async () => {
    const coach = await four();
    await coach.play({ A: 3, B: 1 });
    const id = coach.practice?.id ?? '';
    await coach.phone.sleepUntil('2026-03-18 18:00');
    coach.page = await coach.phone.restart();
    const other = await coach.phone.open();
    await coach.phone.worked(other);
    expect([coach.page, other].map(({ app }) => app.windows.leads.value)).toEqual([true, false]);
    for (const [at, page] of [other, coach.page].entries()) {
      await page.app.practices.takeOut(id);
      const round = page.app.practices.practiceAt(id)!.rounds[0]!;
      await coach.phone.do(() => page.app.actions.correct(round, 'A', 1));
      await coach.phone.do(() => page.app.practices.putAway());
      await coach.phone.pass(1_000, 100);
      for (const each of [coach.page, other]) expect(told(each).sets).toBe(5 + at);
    }
    const keys = [...(await coach.phone.records()).keys()];
    expect(keys.filter((key) => key.startsWith('p/'))).toEqual([]);
  });

  test.each([
    ['the one that leads', 0],
    ['the one that does not lead', 1],
  ])(
    'show a past practice as it is put right in %s, at once and before it is put away',
    async (_, which) => {
      const coach = await four();
      await coach.play({ A: 3, B: 1 });
      const id = coach.practice?.id ?? '';
      await coach.phone.sleepUntil('2026-03-18 18:00');
      coach.page = await coach.phone.restart();
      const other = await coach.phone.open();
      const { app } = [coach.page, other][which]!;
      await app.practices.takeOut(id);
      const round = app.practices.practiceAt(id)!.rounds[0]!;
      await coach.phone.do(() => app.actions.correct(round, 'A', 1));
      for (const each of [coach.page, other]) expect(told(each).sets).toBe(5);
      await coach.phone.do(() => app.practices.putAway());
      await coach.phone.pass(1_000, 100);
      for (const each of [coach.page, other]) {
        expect(told(each).sets).toBe(5);
        expect(each.app.ledger.practised.value).toEqual([]);
      }
    },
  );

  test('keep the practice of today in either, though its page was looked at and left', async () => {
    const coach = await four();
    await coach.play({ A: 2 });
    const other = await coach.phone.open();
    const id = coach.practice?.id ?? '';
    for (const { app } of [other, coach.page]) {
      expect(await app.practices.takeOut(id)).toBe(true);
      await coach.phone.do(() => app.practices.putAway());
      expect(app.practices.openPractice.value?.id).toBe(id);
    }
    for (const each of [coach.page, other]) expect(told(each).sets).toBe(2);
  });

  test('look once for a practice of which the other has a word and nobody an opening', async () => {
    const coach = await four();
    const other = await coach.phone.open();
    const asked = vi.spyOn(other.app.ledger.store, 'practice');
    const player = coach.player('Ada');
    await coach.phone.do(() =>
      coach.app.ledger.append({ kind: 'player-came', practice: 'nowhere', player }),
    );
    await coach.phone.pass(1_000, 100);
    expect(asked).toHaveBeenCalledTimes(1);
  });

  test('are led by the one in which a round was started last', async () => {
    const coach = await four();
    const other = await coach.phone.open();
    const leads = () => [coach.page, other].map(({ app }) => app.windows.leads.value);
    expect(leads()).toEqual([true, false]);
    const first = coach.page;
    coach.page = other;
    await coach.start();
    coach.page = first;
    expect(leads()).toEqual([false, true]);
    await coach.phone.kill(other);
    expect(first.app.windows.leads.value).toBe(true);
  });

  test('leave the lead to the other as one is closed, and the other packs', async () => {
    const coach = await four();
    const other = await coach.phone.open();
    await coach.play({ A: 2 });
    expect(other.app.windows.leads.value).toBe(false);
    await coach.phone.kill(coach.page);
    expect(other.app.windows.leads.value).toBe(true);
    await coach.phone.until('2026-03-18 09:00');
    const keys = [...(await coach.phone.records()).keys()];
    expect(keys.filter((key) => key.startsWith('i/'))).toHaveLength(1);
    expect(told(other).sets).toBe(2);
  });
});

describe('records that were lost past the app', () => {
  test('are written again by a page that still shows them', async () => {
    const coach = await four();
    await coach.play({ A: 2 });
    const keys = [...(await coach.phone.records()).keys()].filter((key) => key.startsWith('p/'));
    for (const key of keys.slice(-3)) await coach.phone.remove(key);
    coach.page.isHidden = true;
    coach.page.isHidden = false;
    await coach.phone.pass(500, 50);
    expect([...(await coach.phone.records()).keys()]).toEqual(expect.arrayContaining(keys));
  });

  test('as the opening of a practice, open it again on the date of what is left', async () => {
    const coach = await four();
    await coach.play({ A: 2 });
    const [opening] = coach.app.ledger.practised.value;
    await coach.phone.kill(coach.page);
    await coach.phone.remove(`p/${opening?.practice}/${opening?.id}`);
    await coach.phone.sleepUntil('2026-03-18 09:00');
    coach.page = await coach.phone.open();
    expect([...told(coach.page).there.keys()]).toEqual(['2026-03-17']);
    expect(told(coach.page).sets).toBe(2);
  });
});
