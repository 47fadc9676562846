import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { Host } from '../faults/served.ts';
import { Coach } from './coach.ts';
import { Phone } from './phone.ts';

/*
 * What a phone with WebKit does otherwise. Each test first shows that this engine does so too, and
 * then what the app makes of it.
 */

const NAMES = ['Pip', 'Juno', 'Odile', 'Bram'];
const engine = inject('engine');

describe.skipIf(!engine)('a phone with WebKit', () => {
  let served: Host;
  let phone: Phone;
  let coach: Coach;

  beforeAll(async () => {
    served = await Host.of();
    phone = await Phone.open(engine as NonNullable<typeof engine>);
    coach = new Coach(phone);
    await phone.visit(served.address);
  });

  afterAll(async () => {
    await phone?.close();
    await served?.close();
  });

  test('gives nothing to a page that was not tapped, and that is not taken for a refusal', async () => {
    expect(await soundUnasked(phone)).toBe('suspended');
    expect(await stayingOnUnasked(phone)).toBe('NotAllowedError');

    await coach.prepare(NAMES);
    await phone.tap('Go to the court');
    await phone.reads('main', 'Start');
    await coach.kept('round-set');
    await phone.reload();
    await phone.reads('main', 'Start');
    expect(await stayingOnUnasked(phone)).toBe('NotAllowedError');
    expect(await phone.text('main')).not.toMatch(/screen on/);
  });

  test('lets the app sound and keep the screen on from the tap on Start', async () => {
    await watch(phone);
    await coach.start();
    await expect.poll(() => phone.run('return window.sounding?.state')).toBe('running');
    const time = await phone.run<number>('return sounding.currentTime');
    await expect.poll(() => phone.run<number>('return sounding.currentTime')).toBeGreaterThan(time);
    await expect.poll(() => staysOn(phone)).toEqual([true]);
  });

  test('keeps the screen on again after a reload in mid-round, from the first mark on', async () => {
    await coach.kept('clock-started');
    await phone.reload();
    await watch(phone);
    await coach.mark(0);
    await expect.poll(() => staysOn(phone)).toEqual([true]);
  });

  test('does not buzz: a mark is seen', async () => {
    expect(await phone.run(`return 'vibrate' in navigator`)).toBe(false);
    // It is ink for a moment only.
    await phone.run(`
      const tile = document.querySelector('.tile-pair:nth-child(2) .tile');
      new MutationObserver(() => {
        if (tile.matches('[data-struck]')) window.seenStruck = true;
      }).observe(tile, { attributes: true });
    `);
    await coach.mark(1);
    await expect.poll(() => coach.counts()).toEqual([1, 1]);
    await expect.poll(() => phone.run('return window.seenStruck')).toBe(true);
  });

  test('may sleep again once the round is stopped', async () => {
    await coach.stop();
    await expect.poll(() => staysOn(phone)).toEqual([false]);
  });

  test('has no share sheet: the week is a file, or text to copy', async () => {
    expect(await phone.run(`return 'share' in navigator || 'canShare' in navigator`)).toBe(false);
    await phone.tap('Put counts right');
    await phone.tap('Done');
    await phone.tap('To Today');
    await phone.tap('Week');
    await phone.tap('Share the week…');
    const table = await phone.download(/^rally-ledger-.*\.csv$/);
    await phone.tap('No file there? Show it as text');
    const shown = await phone.run<string>(`return document.querySelector('textarea').value`);
    // A text field ends its lines in its own way.
    expect(table.replace('\uFEFF', '').replaceAll('\r\n', '\n')).toBe(shown);
  });
});

describe.skipIf(!engine)('a phone with WebKit that keeps nothing', () => {
  let served: Host;
  let phone: Phone;

  beforeAll(async () => {
    served = await Host.of();
    phone = await Phone.open(engine as NonNullable<typeof engine>, { storage: false });
  });

  afterAll(async () => {
    await phone?.close();
    await served?.close();
  });

  test('is told of on every screen of a round, and counts all the same', async () => {
    const told = 'This phone does not let the app save';
    const coach = new Coach(phone);
    await phone.visit(served.address);
    expect(await phone.run('return typeof indexedDB')).toBe('undefined');
    expect(await phone.run('return localStorage')).toBe(null);
    await phone.reads('main', told);
    await coach.prepare(NAMES);
    await phone.tap('Go to the court');
    await phone.reads('main', told);
    await coach.start();
    await phone.reads('main', told);
    await coach.mark(0);
    await coach.mark(1);
    await coach.mark(1);
    await coach.takeBack(1);
    await expect.poll(() => coach.counts()).toEqual([1, 1]);
    await expect.poll(() => coach.areSaved()).toEqual([false, false]);
  });
});

/** The state of a sound that nobody tapped for, after a while. */
const soundUnasked = (phone: Phone) =>
  phone.run<string>(`
    const sound = new AudioContext();
    void sound.resume();
    return new Promise((resolve) => setTimeout(resolve, 500)).then(() => {
      const { state } = sound;
      void sound.close();
      return state;
    });
  `);

/** The name of the error that keeping the screen on ends with where nobody tapped for it. */
const stayingOnUnasked = (phone: Phone) =>
  phone.run<string | undefined>(`
    return navigator.wakeLock.request('screen').then(() => undefined, (error) => error.name);
  `);

/** Keeps what the app asks the phone for where a test can look: `sounding` and `staying`. */
const watch = (phone: Phone) =>
  phone.run(`
    window.AudioContext = class extends AudioContext {
      constructor(...options) {
        super(...options);
        window.sounding = this;
      }
    };
    const { wakeLock } = navigator;
    const request = wakeLock.request.bind(wakeLock);
    window.staying = [];
    wakeLock.request = async (kind) => {
      const lock = await request(kind);
      window.staying.push(lock);
      return lock;
    };
  `);

/** For each time that the app asked to keep the screen on: whether it still does. */
const staysOn = (phone: Phone) =>
  phone.run<boolean[]>('return staying.map((lock) => !lock.released)');
