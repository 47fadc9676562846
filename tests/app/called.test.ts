import { describe, expect, test } from 'vitest';
import { TALLY_COLUMNS } from '../../core/exchange/tallies.ts';
import type { Coach } from './phone/coach.ts';
import { playing } from './phone/playing.ts';
import { told } from './phone/told.ts';

const { phone } = playing();
const COUNTED_BY = TALLY_COLUMNS.indexOf('counted_by');

/** Two pairs that count for themselves, in a round whose horn has gone. */
async function afterTheHorn(): Promise<Coach> {
  const coach = await phone('2026-03-17 18:00');
  await coach.squad('Ada', 'Bo', 'Cy', 'Di');
  await coach.come('Ada', 'Bo', 'Cy', 'Di');
  await coach.plan(['mini-rally', 2]);
  await coach.phone.do(() => coach.app.comingRound.setRound({ called: ['A', 'B'] }));
  await coach.start();
  await coach.horn();
  return coach;
}

describe('a horn that nobody answered', () => {
  test('leaves a round of which no count is known, in no sum, over the night too', async () => {
    const coach = await afterTheHorn();
    expect(coach.round.tallies.map(({ unheard }) => unheard?.length)).toEqual([2, 2]);
    await coach.phone.sleepUntil('2026-03-18 18:00');
    const { sets, rows, rounds } = told(coach.page);
    expect({ sets, rounds }).toEqual({ sets: 0, rounds: { 'mini-rally': 1 } });
    expect(rows.map((row) => row[COUNTED_BY])).toEqual(Array(4).fill('not heard'));
  });

  test('is answered the next day, from the page of its practice', async () => {
    const coach = await afterTheHorn();
    const id = coach.practice?.id ?? '';
    await coach.phone.sleepUntil('2026-03-18 18:00');
    await coach.takeOut(id);
    const round = () => coach.app.practices.practiceAt(id)!.rounds[0]!;
    await coach.phone.do(() => coach.app.actions.callCount(round(), 'B', 4));
    await coach.putAway();
    await coach.phone.worked(coach.page);
    expect(told(coach.page).sets).toBe(4);
    expect(told(coach.page).rows.map((row) => row[COUNTED_BY])).toEqual([
      ...['not heard', 'not heard'],
      ...['called', 'called'],
    ]);
  });
});

describe('two windows that call in at once', () => {
  test('have each count once, and the one that was said last where they differ', async () => {
    const coach = await afterTheHorn();
    const other = await coach.phone.open();
    const theirs = other.app.actions.lastRound(other.app.practices.practice.value)!;
    await coach.phone.do(() => {
      coach.app.actions.callCount(coach.round, 'A', 3);
      other.app.actions.callCount(theirs, 'A', 3);
      coach.app.actions.callCount(coach.round, 'B', 5);
    });
    await coach.phone.pass(1_000);
    await coach.phone.do(() => other.app.actions.callCount(theirs, 'B', 6));
    await coach.phone.pass(1_000, 100);
    for (const page of [coach.page, other]) {
      const round = page.app.actions.lastRound(page.app.practices.practice.value)!;
      expect(round.tallies.map(({ sets }) => sets)).toEqual([3, 6]);
      expect(told(page).sets).toBe(9);
    }
  });

  test('have lost nothing where one of them is killed in the middle', async () => {
    const coach = await afterTheHorn();
    await coach.phone.do(() => coach.app.actions.callCount(coach.round, 'A', 3));
    await coach.phone.pass(1_000, 100);
    coach.page = await coach.phone.restart();
    expect(coach.round.tallies.map(({ sets, unheard }) => [sets, unheard?.length])).toEqual([
      [3, undefined],
      [0, 2],
    ]);
    await coach.phone.do(() => coach.app.actions.callCount(coach.round, 'B', 2));
    await coach.settle();
    expect(told(coach.page).sets).toBe(5);
  });
});
