import { describe, expect, test } from 'vitest';
import type { Coach } from './phone/coach.ts';
import { playing } from './phone/playing.ts';

const { phone } = playing();

async function four(...steps: (readonly [string, number])[]): Promise<Coach> {
  const coach = await phone('2026-03-17 18:00');
  await coach.squad('Ada', 'Bo', 'Cy', 'Di');
  await coach.come('Ada', 'Bo', 'Cy', 'Di');
  if (steps.length > 0) await coach.plan(...steps);
  return coach;
}

const coming = ({ app }: Coach) => app.comingRound.comingRound.value;
const left = ({ app }: Coach) => app.actions.roundsLeft(app.practices.openPractice.value);

describe('a block that is changed while it is played', () => {
  test('comes to the second drill where the first is taken out after its two rounds, and is done after it', async () => {
    const coach = await four(['long-rally', 2], ['mini-rally', 2]);
    await coach.play();
    await coach.play();
    const { actions } = coach.app;
    const [, second] = actions.currentPlan().steps;
    await coach.phone.do(() => actions.plan({ ...actions.currentPlan(), steps: [second!] }));
    expect(coming(coach)).toMatchObject({ number: 1, step: { drill: 'mini-rally' } });
    expect(left(coach)).toBe(2);
    await coach.play();
    expect(coming(coach)).toMatchObject({ number: 2, step: { drill: 'mini-rally' } });
    await coach.play();
    expect(left(coach)).toBe(0);
    expect(coming(coach)?.step).toBeUndefined();
    const before = coach.practice?.rounds.length;
    await coach.phone.do(() => coach.app.comingRound.setRound());
    expect(coach.practice?.rounds.length).toBe(before);
  });

  test('begins at round 1 of all its rounds where a proposal is taken after a finished block', async () => {
    const coach = await four(['mini-rally', 1]);
    await coach.play({ A: 1 });
    expect(left(coach)).toBe(0);
    const { actions } = coach.app;
    await coach.phone.do(() =>
      actions.plan({
        seconds: 120,
        changeover: 45,
        steps: [
          { drill: 'mini-rally', rounds: 2, partners: 'keep' },
          { drill: 'volley-to-volley', rounds: 1, partners: 'keep' },
        ],
      }),
    );
    expect(left(coach)).toBe(3);
    expect(coming(coach)).toMatchObject({ number: 1, step: { drill: 'mini-rally' } });
  });

  test('plays a drill again that was taken out and put in again, all its rounds', async () => {
    const coach = await four(['mini-rally', 2]);
    await coach.play();
    const { actions } = coach.app;
    await coach.phone.do(() => actions.plan({ ...actions.currentPlan(), steps: [] }));
    await coach.plan(['mini-rally', 2]);
    expect(left(coach)).toBe(2);
    expect(coming(coach)?.number).toBe(1);
  });

  test('goes on where it was as the order of its drills is turned', async () => {
    const coach = await four(['long-rally', 2], ['mini-rally', 1]);
    await coach.play();
    const { actions } = coach.app;
    await coach.phone.do(() =>
      actions.plan({ ...actions.currentPlan(), steps: actions.currentPlan().steps.toReversed() }),
    );
    expect(coming(coach)).toMatchObject({ number: 2, step: { drill: 'mini-rally' } });
    expect(left(coach)).toBe(2);
  });

  test('takes a round that was struck out for one that is still to be played', async () => {
    const coach = await four(['mini-rally', 1]);
    await coach.play();
    await coach.phone.do(() => coach.app.actions.press('round-struck', coach.round));
    expect(left(coach)).toBe(1);
    await coach.phone.do(() => coach.app.actions.press('round-restored', coach.round));
    expect(left(coach)).toBe(0);
  });
});

describe('the pairs of the coming round', () => {
  test('begin the other way round where today’s round of the drill began with the same player', async () => {
    // Both roles of it strike the same: no stroke that anyone has waited for decides.
    const coach = await four(['mini-rally', 2]);
    const firsts = () => coming(coach)?.pairs.map(({ players }) => players[0]);
    const first = firsts();
    await coach.play({ A: 1, B: 1 });
    expect(firsts()).toHaveLength(2);
    for (const player of firsts() ?? []) expect(first).not.toContain(player);
  });

  test('keep who begins as it was swapped until Start, whatever today’s rounds say', async () => {
    const coach = await four(['mini-rally', 2]);
    await coach.play({ A: 1, B: 1 });
    await coach.phone.do(() => coach.app.comingRound.setRound());
    const swapped = coming(coach)!.pairs.map((pair) => ({
      ...pair,
      players: pair.players.toReversed(),
    }));
    await coach.phone.do(() => coach.app.comingRound.setRound({ pairs: swapped }));
    expect(coming(coach)?.pairs).toEqual(swapped);
    await coach.start();
    expect(coach.round.tallies.map(({ pair }) => pair)).toEqual(swapped);
  });

  test('stay as they were swapped until Start, and are set once', async () => {
    const coach = await four(['mini-rally', 1]);
    await coach.phone.do(() => coach.app.comingRound.setRound());
    const [a, b] = coming(coach)!.pairs;
    const swapped = [
      { ...a!, players: [a!.players[0]!, b!.players[1]!] },
      { ...b!, players: [b!.players[0]!, a!.players[1]!] },
    ];
    await coach.phone.do(() => coach.app.comingRound.setRound({ pairs: swapped }));
    expect(coming(coach)?.pairs).toEqual(swapped);
    const entries = coach.app.ledger.practised.value.length;
    await coach.phone.do(() => coach.app.comingRound.setRound());
    expect(coach.app.ledger.practised.value).toHaveLength(entries);
    expect(coach.practice?.rounds).toHaveLength(1);
  });

  test.each([
    ['stay together where partners keep', 'keep', 2],
    ['are others in each round where partners turn', 'turn', 6],
  ] as const)('%s', async (_, partners, distinct) => {
    const coach = await four();
    const steps = [{ drill: 'mini-rally', rounds: 3, partners }];
    await coach.phone.do(() => coach.app.actions.plan({ seconds: 120, changeover: 0, steps }));
    const seen = new Set<string>();
    for (let round = 0; round < 3; round++) {
      await coach.play();
      for (const { pair } of coach.round.tallies) seen.add(pair.players.toSorted().join(' '));
    }
    expect(seen.size).toBe(distinct);
  });

  test('wait where there is no court for them, and play before those who have played more', async () => {
    const coach = await four();
    await coach.phone.do(() =>
      coach.app.ledger.append({ kind: 'squad-set', courts: 1, size: 'full', units: 'metres' }),
    );
    await coach.plan(['long-rally', 2]);
    const [playing, waiting] = [coming(coach)?.courts?.playing, coming(coach)?.courts?.waiting];
    expect(playing).toHaveLength(1);
    expect(waiting).toHaveLength(1);
    await coach.play({ A: 1 });
    expect(coach.round.waiting).toEqual(waiting);
    const next = coming(coach)?.courts?.playing.flatMap(({ pair }) => pair.players);
    expect(next?.toSorted()).toEqual(waiting?.flatMap(({ players }) => players).toSorted());
  });

  test('put those together who have played as often where not everyone has a court, so that rounds stay even', async () => {
    const coach = await phone('2026-03-17 18:00');
    const names = ['Ada', 'Bo', 'Cy', 'Di', 'Eli', 'Flo'];
    await coach.squad(...names);
    await coach.come(...names);
    await coach.phone.do(() =>
      coach.app.ledger.append({ kind: 'squad-set', courts: 2, size: 'full', units: 'metres' }),
    );
    const steps = [{ drill: 'long-rally', rounds: 6, partners: 'turn' as const }];
    await coach.phone.do(() => coach.app.actions.plan({ seconds: 120, changeover: 0, steps }));
    const played = new Map(names.map((name) => [coach.player(name), 0]));
    for (let round = 0; round < 6; round++) {
      await coach.play();
      for (const { pair } of coach.round.tallies) {
        for (const player of pair.players) played.set(player, played.get(player)! + 1);
      }
      const rounds = [...played.values()];
      expect(Math.max(...rounds) - Math.min(...rounds)).toBeLessThanOrEqual(1);
    }
  });
});
