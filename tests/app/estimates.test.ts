import { describe, expect, test } from 'vitest';
import type { Summary } from '../../core/ledger/summary.ts';
import type { Coach } from './phone/coach.ts';
import { playing } from './phone/playing.ts';

const { phone } = playing();

async function begun(): Promise<Coach> {
  const coach = await phone('2026-03-17 18:00');
  await coach.squad('Ada', 'Bo', 'Cy', 'Di');
  await coach.come('Ada', 'Bo', 'Cy', 'Di');
  await coach.plan(['mini-rally', 3]);
  return coach;
}

const estimates = ({ app }: Coach) =>
  app.estimates.estimated.value.map(({ rounds }) =>
    rounds.map(({ tallies }) => tallies.map(({ estimate }) => estimate)),
  );

const storedOf = async (coach: Coach) =>
  [...(await coach.phone.records())].find(([key]) => key.startsWith('i/'))?.[1] as
    | Summary
    | undefined;

describe('what all touches of a round come to', () => {
  test('is not worked out before the round is settled, for its count does not stand', async () => {
    const coach = await begun();
    await coach.start();
    await coach.tap(['A', 'B', 'A']);
    await coach.horn();
    await coach.phone.worked(coach.page);
    expect(coach.app.estimates.waiting.value).toBe(0);
    expect(estimates(coach)).toEqual([[[undefined, undefined]]]);
    await coach.settle();
    expect(coach.app.estimates.waiting.value).toBe(2);
    await coach.phone.worked(coach.page);
    expect(coach.app.estimates.waiting.value).toBe(0);
    expect(estimates(coach)[0]?.[0]?.map((each) => each && each.shots >= each.low)).toEqual([
      true,
      true,
    ]);
  });

  test('is worked out of a round that was passed over, and of one whose practice was closed', async () => {
    const coach = await begun();
    await coach.start();
    await coach.tap(['A']);
    await coach.horn();
    await coach.phone.do(() => coach.app.actions.press('round-skipped', coach.round));
    await coach.phone.worked(coach.page);
    expect(estimates(coach)[0]?.[0]).not.toContain(undefined);
    await coach.start();
    await coach.tap(['A']);
    await coach.horn();
    await coach.close();
    await coach.phone.worked(coach.page);
    expect(estimates(coach)[0]?.[1]).not.toContain(undefined);
  });

  test('waits while a clock runs, and is there once that round is settled', async () => {
    const coach = await begun();
    await coach.start();
    await coach.tap(['A', 'A']);
    await coach.horn();
    // In one breath, so that the phone is never idle in between.
    const { actions, comingRound } = coach.app;
    actions.press('round-settled', coach.round);
    comingRound.setRound();
    actions.press('clock-started', coach.round);
    expect(coach.app.estimates.waiting.value).toBeGreaterThan(0);
    await coach.phone.pass(30_000, 50);
    expect(estimates(coach)[0]?.[0]).toEqual([undefined, undefined]);
    await coach.horn();
    await coach.settle();
    await coach.phone.worked(coach.page);
    expect(estimates(coach)[0]?.flat()).toHaveLength(4);
    expect(estimates(coach)[0]?.flat()).not.toContain(undefined);
  });

  test('is worked out anew for the one tally that was put right, and for no other', async () => {
    const coach = await begun();
    await coach.play({ A: 3, B: 2 });
    await coach.phone.worked(coach.page);
    const before = estimates(coach)[0]?.[0];
    coach.app.actions.correct(coach.round, 'B', 1);
    expect(estimates(coach)[0]?.[0]).toEqual([before?.[0], undefined]);
    await coach.phone.worked(coach.page);
    const after = estimates(coach)[0]?.[0];
    expect(after?.[0]).toBe(before?.[0]);
    expect(after?.[1]?.shots).toBeGreaterThan(30);
    expect(after?.[1]?.shots).not.toBe(before?.[1]?.shots);
  });

  test('is kept beside the practice once that is packed, though it was worked out before', async () => {
    const coach = await begun();
    await coach.play({ A: 3, B: 2 });
    await coach.phone.worked(coach.page);
    const worked = estimates(coach);
    await coach.phone.until('2026-03-18 09:00');
    await coach.phone.worked(coach.page);
    const stored = await storedOf(coach);
    expect([stored?.rounds.map(({ tallies }) => tallies.map(({ estimate }) => estimate))]).toEqual(
      worked,
    );
  });

  test('is the same after a restart, from what was kept', async () => {
    const coach = await begun();
    await coach.play({ A: 3, B: 2 });
    await coach.phone.worked(coach.page);
    const worked = estimates(coach);
    await coach.phone.sleepUntil('2026-03-18 09:00');
    coach.page = await coach.phone.restart();
    await coach.phone.worked(coach.page);
    expect(estimates(coach)).toEqual(worked);
  });

  test('of a drill follows a tempo check of the same practice, and none that came later', async () => {
    const coach = await begun();
    await coach.play({ A: 3, B: 2 });
    await coach.phone.worked(coach.page);
    const usual = estimates(coach)[0]?.[0]?.[0];
    coach.app.tempo.keepCheck('tempo-checked', 'mini-rally', 1.1);
    // What was made at another tempo is not shown as if it were made at this one.
    expect(estimates(coach)[0]?.[0]?.[0]).toBeUndefined();
    await coach.phone.worked(coach.page);
    const checked = estimates(coach)[0]?.[0]?.[0];
    expect(checked?.pace).toEqual({ tempo: 1.1 });
    expect(checked?.shots).not.toBe(usual?.shots);
    expect(coach.app.estimates.paceNow('mini-rally')).toEqual({ tempo: 1.1 });
    await coach.phone.sleepUntil('2026-03-18 18:00');
    await coach.come('Ada', 'Bo', 'Cy', 'Di');
    await coach.phone.do(() => coach.app.tempo.keepCheck('tempo-checked', 'mini-rally', 1.6));
    await coach.phone.worked(coach.page);
    expect(estimates(coach)[0]?.[0]?.[0]).toEqual(checked);
    expect(coach.app.estimates.paceNow('mini-rally')).toEqual({ tempo: 1.6 });
  });

  test('of the newest practice is worked out first, for that is what is looked at', async () => {
    const coach = await begun();
    await coach.play({ A: 1 });
    const tuesday = coach.practice?.id ?? '';
    await coach.phone.worked(coach.page);
    await coach.phone.sleepUntil('2026-03-18 18:00');
    await coach.come('Ada', 'Bo', 'Cy', 'Di');
    await coach.plan(['mini-rally', 1]);
    await coach.play({ A: 1 });
    await coach.phone.worked(coach.page);
    await coach.takeOut(tuesday);
    const { actions, practices } = coach.app;
    const there = () => estimates(coach).map((rounds) => !rounds.flat().includes(undefined));
    expect(there()).toEqual([true, true]);
    actions.correct(practices.practiceAt(tuesday)!.rounds[0]!, 'A', 1);
    actions.correct(coach.round, 'A', 1);
    const seen = [there()];
    for (let look = 0; look < 60; look++) {
      await coach.phone.pass(10, 10);
      if (there().join() !== seen.at(-1)?.join()) seen.push(there());
    }
    expect(seen).toEqual([
      [false, false],
      [false, true],
      [true, true],
    ]);
  });

  test('of two like tallies is each its own, where a tempo was measured between them', async () => {
    const coach = await begun();
    // Nobody made a set: the two tallies are the same but for what was known of the clock.
    await coach.phone.do(() => coach.app.comingRound.setRound({ turns: false }));
    await coach.play();
    const pairs = coach.round.tallies.map(({ pair }) => pair);
    await coach.close();
    await coach.come('Ada', 'Bo', 'Cy', 'Di');
    await coach.phone.do(() => coach.app.tempo.keepCheck('tempo-checked', 'mini-rally', 1));
    await coach.plan(['mini-rally', 1]);
    await coach.phone.do(() => coach.app.comingRound.setRound({ pairs, turns: false }));
    await coach.play();
    await coach.phone.worked(coach.page);
    const [morning, evening] = estimates(coach).map((rounds) => rounds[0]?.[0]);
    expect(morning?.pace).toBeUndefined();
    expect(evening?.pace).toEqual({ tempo: 1 });
    expect(evening?.shots).not.toBe(morning?.shots);
  });

  test('is told at once to whoever asks in settle, before the round is settled', async () => {
    const coach = await begun();
    await coach.start();
    await coach.tap(['A', 'A']);
    await coach.horn();
    void coach.app.estimates.estimateNow(coach.round.id, 'A');
    await coach.phone.pass(200, 50);
    const [a, b] = estimates(coach)[0]?.[0] ?? [];
    expect(a?.shots).toBeGreaterThan(19);
    expect(b).toBeUndefined();
  });

  test.each([
    ['at once, as far as the phone says that it has time', 50, 1],
    ['one by one, where the phone has no more time than for one', 0, 2],
  ])('is worked out of several pairs %s', async (_, timeRemaining, moments) => {
    const coach = await begun();
    let asked = 0;
    Object.assign(coach.page.window, {
      requestIdleCallback: (deed: (free: { timeRemaining(): number }) => void) => {
        asked += 1;
        setTimeout(() => deed({ timeRemaining: () => timeRemaining }), 10);
      },
    });
    await coach.play({ A: 2, B: 1 });
    await coach.phone.pass(1_000, 20);
    expect(estimates(coach)[0]?.[0]).not.toContain(undefined);
    expect(asked).toBe(moments);
  });
});
