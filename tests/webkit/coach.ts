import { By } from 'selenium-webdriver';
import { expect } from 'vitest';
import type { Phone } from './phone.ts';

/** The shortest round that can be set, in seconds. */
export const SECONDS = 30;
export const DRILL = 'Mini rally';

/** What a coach does with the app on a phone with WebKit. Pairs are told by their place, from 0. */
export class Coach {
  constructor(readonly phone: Phone) {}

  /** From an empty Today to a block of one round of half a minute, with everyone here. */
  async prepare(names: readonly string[]): Promise<void> {
    const { phone } = this;
    await phone.tap('Add players');
    for (const name of names) await phone.enter('#nickname', name);
    await phone.reads('header', `${names.length} players`);
    await phone.tap('On to today’s practice');
    await phone.tap('Everyone is here');
    await phone.tap('Choose drills');
    await phone.tap(`Add ${DRILL}`);
    await phone.reads('.block-steps', DRILL);
    for (const length of ['90 s', '1 min', `${SECONDS} s`]) {
      await phone.tap('A round lasts −');
      await phone.reads('[aria-label="A round lasts"]', length);
    }
    await phone.tap('Done');
    await phone.reads('[aria-labelledby=block]', DRILL);
  }

  async start(): Promise<void> {
    await this.phone.tap('Start…');
    await this.phone.see('[role=timer]');
  }

  /** Stops the round. The app takes its question back after three seconds: then Stop is tapped again. */
  stop(): Promise<void> {
    return this.phone.tapUntil('[data-over]', 'Stop', 'Stop now?');
  }

  /** The names on the tiles, pair by pair. */
  pairs(): Promise<string[][]> {
    return this.phone.run(`
      return [...document.querySelectorAll('.tile-pair')].map((pair) =>
        [...pair.querySelectorAll('.tile-name .pair-call')].map((name) => name.textContent));
    `);
  }

  counts(): Promise<number[]> {
    return this.phone.run(`
      return [...document.querySelectorAll('.tile-sets')].map((sets) => Number.parseInt(sets.textContent, 10));
    `);
  }

  mark(place: number): Promise<void> {
    return this.phone.tapAt(By.css(`.tile-pair:nth-child(${place + 1}) .tile-count`));
  }

  takeBack(place: number): Promise<void> {
    return this.phone.tapAt(By.css(`.tile-pair:nth-child(${place + 1}) .tile-back`));
  }

  /** An entry of this kind lies on the disk: before that a reload may lose what no screen called saved. */
  async kept(kind: string): Promise<void> {
    const there = () =>
      this.phone.run<boolean>(
        `
          return new Promise((resolve, reject) => {
            const open = indexedDB.open('rally-ledger');
            open.onerror = () => reject(open.error);
            open.onsuccess = () => {
              const all = open.result.transaction('records').objectStore('records').getAll();
              all.onerror = () => reject(all.error);
              all.onsuccess = () => {
                open.result.close();
                resolve(all.result.some((record) => record?.kind === arguments[0]));
              };
            };
          });
        `,
        kind,
      );
    await expect.poll(there).toBe(true);
  }

  /** What the tiles of the pairs say of their marks: saved or not. */
  areSaved(): Promise<boolean[]> {
    return this.phone.run(`
      return [...document.querySelectorAll('.tile-saved')].map((disc) => disc.dataset.saved === 'true');
    `);
  }
}
