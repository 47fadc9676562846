import papaparse from 'papaparse';
import { afterEach, beforeEach, describe, expect, inject, test } from 'vitest';
import { Host } from '../faults/served.ts';
import { Coach, DRILL, SECONDS } from './coach.ts';
import { Phone } from './phone.ts';

/*
 * The main job in WebKit, on its own clock and, after the first load, without a network: names in,
 * a block, a round of half a minute with a reload in its midst, settle; then the player's page, the
 * week and its table, which is read back by another library and held against a count by hand.
 */

const NAMES = ['Pip', 'Juno', 'Odile', 'Bram', 'Suki'];
/** A set of it is ten balls, five by each of the two. */
const TOUCHES_EACH = 5;

interface Own {
  sets: number;
  seconds: number;
}

/** What each player did. In a trio the one who hit first steps out after each set. */
function countByHand(pairs: readonly string[][], sets: readonly number[]): Map<string, Own> {
  const own = new Map<string, Own>();
  for (const [place, players] of pairs.entries()) {
    for (const player of players) {
      own.set(player, { sets: 0, seconds: (SECONDS * 2) / players.length });
    }
    let [first = '', second = '', resting] = players;
    for (let set = 0; set < (sets[place] ?? 0); set++) {
      for (const player of [first, second]) (own.get(player) as Own).sets += 1;
      if (resting !== undefined) [first, second, resting] = [second, resting, first];
    }
  }
  return own;
}

const engine = inject('engine');

describe.skipIf(!engine)('the main job in WebKit', () => {
  let served: Host;
  let phone: Phone;
  let coach: Coach;

  beforeEach(async () => {
    served = await Host.of();
    phone = await Phone.open(engine as NonNullable<typeof engine>);
    coach = new Coach(phone);
  });

  afterEach(async () => {
    await phone?.close();
    await served?.close();
  });

  test('a coach does the whole job, reloads in mid-round, and the table equals a count by hand', async () => {
    await phone.visit(served.address);
    // From here on only what the phone has kept is there.
    await phone.workerIsInCharge();
    await served.close();
    await phone.reload();

    await coach.prepare(NAMES);
    await phone.picture('today');

    await phone.tap('Go to the court');
    await coach.start();
    const pairs = await coach.pairs();
    expect(pairs.map((players) => players.length).sort()).toEqual([2, 3]);
    expect(pairs.flat().sort()).toEqual([...NAMES].sort());
    for (const place of [0, 1, 1, 0, 1, 1, 0]) await coach.mark(place);
    await coach.takeBack(0);
    await expect.poll(() => coach.counts()).toEqual([2, 4]);
    await expect.poll(() => coach.areSaved()).toEqual([true, true]);
    await phone.picture('court');

    await phone.reload();
    await expect.poll(() => coach.pairs()).toEqual(pairs);
    await expect.poll(() => coach.counts()).toEqual([2, 4]);
    await coach.mark(0);
    await expect.poll(() => coach.counts()).toEqual([3, 4]);

    await phone.see('[data-over]', SECONDS * 1_000);
    await phone.tap('Put counts right');
    await phone.tap(`Change the count of ${pairs[1]?.[0]}…`);
    await phone.tap(`One set more for ${pairs[1]?.[0]}…`);
    await phone.reads('.settle-pairs > li:nth-child(2) output', '5');
    await phone.picture('settle');
    const byHand = countByHand(pairs, [3, 5]);
    await phone.tap('Done');

    await phone.tap('Players and their counts');
    await phone.tap('Suki');
    const touches = (byHand.get('Suki')?.sets ?? 0) * TOUCHES_EACH;
    await phone.tap('Every number of the day');
    await phone.reads('.own-total', `${touches} `);
    for (const other of NAMES) {
      if (other !== 'Suki') expect(await phone.text('main')).not.toContain(other);
    }
    await phone.picture('player');

    await phone.tap('Week');
    await phone.reads('main', 'Suki');
    await phone.picture('week');
    await phone.tap('Share the week…');
    await phone.reads('main', 'Saved as rally-ledger-');
    const { data, errors } = papaparse.parse<Record<string, string>>(
      await phone.download(/^rally-ledger-.*\.csv$/),
      { header: true, skipEmptyLines: true },
    );
    expect(errors).toEqual([]);
    expect(data).toHaveLength(NAMES.length);
    for (const [player, { sets, seconds }] of byHand) {
      expect.soft(data.find((row) => row.player === player)).toMatchObject({
        round: '1',
        drill: DRILL,
        sets: String(sets),
        touches_counted: String(sets * TOUCHES_EACH),
        live_seconds: String(seconds),
        sets_per_minute: String(Math.round((sets / seconds) * 6000) / 100),
      });
    }

    // What was kept outlives the page.
    await coach.kept('round-settled');
    await phone.reload();
    await phone.reads('main', 'Suki');
  });
});
