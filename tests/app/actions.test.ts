import { describe, expect, test } from 'vitest';
import { makeEntry, type Saying } from '../../core/ledger/entry.ts';
import { nextStamp } from '../../core/ledger/stamp.ts';
import type { Coach } from './phone/coach.ts';
import { playing } from './phone/playing.ts';
import { told } from './phone/told.ts';

const { phone } = playing();

async function begun(now = '2026-03-17 18:00', drill = 'mini-rally'): Promise<Coach> {
  const coach = await phone(now);
  await coach.squad('Ada', 'Bo', 'Cy', 'Di');
  await coach.come('Ada', 'Bo', 'Cy', 'Di');
  await coach.plan([drill, 2]);
  return coach;
}

describe('the practice that a deed belongs to', () => {
  test('is one of the new day, on the new date, for a page that was left open overnight', async () => {
    const coach = await begun();
    await coach.play({ A: 2 });
    const yesterday = coach.practice?.id;
    await coach.phone.sleepUntil('2026-03-18 17:30');
    await coach.come('Ada');
    expect(coach.practice).toMatchObject({ date: '2026-03-18', here: [coach.player('Ada')] });
    expect(coach.practice?.id).not.toBe(yesterday);
  });

  test('is one of the new day even where no clock of the page has noticed yet that it slept', async () => {
    const coach = await begun();
    await coach.play({ A: 2 });
    const slept = Date.now() + 24 * 3_600_000;
    coach.phone.setClock(slept);
    coach.app.actions.come(coach.player('Ada'));
    await coach.phone.pass(100);
    expect(coach.practice).toMatchObject({ date: '2026-03-18', here: [coach.player('Ada')] });
  });

  test('is still that of yesterday for a tap shortly after midnight', async () => {
    const coach = await begun('2026-03-17 23:40');
    await coach.play({ A: 2 });
    const evening = coach.practice?.id;
    await coach.phone.until('2026-03-18 00:10');
    expect(coach.app.clock.today()).toBe('2026-03-18');
    await coach.play({ A: 1 });
    expect(coach.practice).toMatchObject({ id: evening, date: '2026-03-17' });
    expect([...told(coach.page).there.keys()]).toEqual(['2026-03-17']);
    expect(told(coach.page).sets).toBe(3);
  });

  test('is another one after the practice was closed, and the same one where it is opened again', async () => {
    const coach = await begun();
    await coach.play({ A: 2 });
    const first = coach.practice?.id;
    await coach.close();
    expect(coach.practice).toBeUndefined();
    await coach.phone.do(() => coach.app.actions.reopenPractice());
    expect(coach.practice?.id).toBe(first);
    await coach.close();
    await coach.phone.do(() => coach.app.actions.newPractice());
    expect(coach.practice?.id).not.toBe(first);
    expect(coach.practice?.rounds).toEqual([]);
  });

  test('holds a whole block of more than four hours, for each deed prolongs it', async () => {
    const coach = await begun('2026-03-17 21:00');
    await coach.play({ A: 1 });
    for (const hour of ['2026-03-18 00:30', '2026-03-18 04:00']) {
      await coach.phone.sleepUntil(hour);
      await coach.leave('Di');
      await coach.come('Di');
    }
    expect(coach.practice?.date).toBe('2026-03-17');
    await coach.phone.sleepUntil('2026-03-18 09:00');
    expect(coach.practice).toBeUndefined();
  });
});

describe('settle', () => {
  test('has a plus that is never dead, however often minus was pressed at none', async () => {
    const coach = await begun();
    await coach.play({ A: 1 });
    const sets = () => coach.round.tallies[0]?.sets;
    const correct = (by: number) =>
      coach.phone.do(() => coach.app.actions.correct(coach.round, 'A', by));
    for (const [by, stands] of [
      [-1, 0],
      [-1, 0],
      [-1, 0],
      [1, 1],
      [1, 2],
    ] as const) {
      await correct(by);
      expect(sets()).toBe(stands);
    }
  });

  test('has a plus that is not dead where another phone has the larger count', async () => {
    const coach = await begun();
    await coach.start();
    await coach.tap(['A']);
    await coach.horn();
    const { practice, said } = coach.round;
    let stamp = '';
    const other = (saying: Saying) => {
      stamp = nextStamp(stamp, Date.now(), 'another-phPAGE-1');
      return makeEntry(saying, stamp, Date.now());
    };
    const marks = [20, 40, 60].map((second) =>
      other({ kind: 'mark', practice, ...said, pair: 'A', second }),
    );
    await coach.phone.do(() => coach.app.practices.takeInFile([], new Map([[practice, marks]])));
    const a = () => coach.round.tallies[0];
    expect(a()).toMatchObject({ sets: 3, also: [{ sets: 1 }] });
    for (const [by, stands] of [
      [1, 4],
      [-1, 3],
      [-1, 2],
      [1, 3],
    ] as const) {
      await coach.phone.do(() => coach.app.actions.correct(coach.round, 'A', by));
      expect(a()?.sets).toBe(stands);
    }
  });

  test('has a plus that is not dead for a player whose name was put right on target', async () => {
    const coach = await begun('2026-03-17 18:00', 'deep-past-the-markers');
    await coach.squad('Eva');
    await coach.start();
    await coach.horn();
    const [a, b] = coach.round.tallies.map(({ pair }) => pair);
    const players = [coach.player('Eva'), a!.players[1]!];
    await coach.phone.do(() =>
      coach.app.actions.correctPairs(coach.round, [{ ...a!, players }, b!]),
    );
    await coach.phone.do(() => coach.app.actions.correct(coach.round, 'A', 1, players[0]));
    expect(coach.round.tallies[0]).toMatchObject({
      sets: 1,
      byPlayer: { [players[0]!]: 1, [players[1]!]: 0 },
    });
  });

  test('decides a late mark, and takes its word back', async () => {
    const coach = await begun();
    await coach.start();
    await coach.horn();
    await coach.tap(['A'], 1);
    const look = () => coach.round.tallies[0];
    expect(look()).toMatchObject({ sets: 0, late: 1, open: 1 });
    const [mark] = coach.round.marks.A ?? [];
    const judge = (counts: boolean) =>
      coach.phone.do(() => coach.app.actions.judge(coach.round, mark!.id, counts));
    await judge(true);
    expect(look()).toMatchObject({ sets: 1, open: 0 });
    await judge(false);
    expect(look()).toMatchObject({ sets: 0, open: 0 });
  });
});

describe('what is said of a round', () => {
  test('names the pairs that were seen in it, for another phone may have started it with others', async () => {
    const coach = await begun();
    await coach.start();
    const entries = () => coach.app.ledger.practised.value;
    const set = entries().findLast(({ kind }) => kind === 'round-set')?.id;
    await coach.tap(['A']);
    await coach.phone.do(() => coach.app.sides.takeBackOn(coach.round, { letter: 'A' }));
    await coach.horn();
    await coach.phone.do(() => coach.app.actions.correct(coach.round, 'B', 1));
    await coach.settle();
    const said = entries().slice(entries().findIndex(({ kind }) => kind === 'clock-started'));
    expect(said.map(({ kind }) => kind)).toEqual([
      'clock-started',
      'mark',
      'mark-taken-back',
      'tally-corrected',
      'round-settled',
    ]);
    expect(said.map((entry) => 'set' in entry && entry.set)).toEqual(said.map(() => set));
  });
});

describe('names that are put right', () => {
  test('are said of the pair that they changed in, and of no other', async () => {
    const coach = await begun();
    await coach.squad('Eva');
    await coach.start();
    await coach.horn();
    const [a, b] = coach.round.tallies.map(({ pair }) => pair);
    const players = [a!.players[0]!, coach.player('Eva')];
    const before = coach.app.ledger.practised.value.length;
    await coach.phone.do(() =>
      coach.app.actions.correctPairs(coach.round, [{ ...a!, players }, b!]),
    );
    expect(coach.app.ledger.practised.value.slice(before)).toEqual([
      expect.objectContaining({ kind: 'pair-corrected', pair: 'A', players }),
    ]);
  });
});

describe('a phone whose clock is set in mid-round', () => {
  test('goes on with the seconds that the round had, and says that it wants a look', async () => {
    const coach = await begun();
    await coach.start();
    await coach.phone.pass(30_000);
    coach.phone.setClock(Date.now() + 3_600_000);
    await coach.phone.pass(10_000);
    expect(coach.app.actions.isRunning(coach.round)).toBe(true);
    await coach.tap(['A'], 5);
    const [mark] = coach.round.marks.A ?? [];
    expect(mark?.second).toBeGreaterThan(44);
    expect(mark?.second).toBeLessThan(48);
    expect(coach.round.jumped).toBeCloseTo(3600, 0);
  });

  test('has played the time out where it slept meanwhile', async () => {
    const coach = await begun();
    await coach.start();
    await coach.phone.pass(30_000);
    await coach.phone.sleepUntil(Date.now() + 3_600_000);
    expect(coach.app.actions.isRunning(coach.round)).toBe(false);
    expect(coach.round.jumped).toBeCloseTo(3600, 0);
  });
});

describe('a take-back', () => {
  test('takes the last mark of the tile, so that the times before it stand', async () => {
    const coach = await begun();
    await coach.start();
    await coach.tap(['A', 'B', 'A', 'A']);
    const before = coach.round.tallies[0]?.times ?? [];
    await coach.phone.do(() => coach.app.sides.takeBackOn(coach.round, { letter: 'A' }));
    expect(coach.round.tallies[0]?.times).toEqual(before.slice(0, 2));
    expect(coach.round.tallies[1]?.sets).toBe(1);
    await coach.phone.do(() => coach.app.sides.takeBackOn(coach.round, { letter: 'A' }));
    expect(coach.round.tallies[0]?.times).toEqual(before.slice(0, 1));
  });

  test('on a split tile takes that player’s last, and none where there is none', async () => {
    const coach = await begun('2026-03-17 18:00', 'deep-past-the-markers');
    await coach.start();
    const [one, other] = coach.round.tallies[0]?.pair.players ?? [];
    for (const player of [one, other, one]) {
      await coach.phone.pass(10_000);
      await coach.phone.do(() => coach.app.actions.count(coach.round, 'A', player));
    }
    const take = (player = '') =>
      coach.phone.do(() => coach.app.sides.takeBackOn(coach.round, { letter: 'A', player }));
    await take(other);
    await take(other);
    expect(coach.round.tallies[0]).toMatchObject({ byPlayer: { [one!]: 2, [other!]: 0 } });
  });
});
