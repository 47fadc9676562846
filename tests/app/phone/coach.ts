import type { OpenRound } from '../../../core/ledger/practice.ts';
import type { Step } from '../../../core/round/block.ts';
import type { Page } from './page.ts';
import type { Phone } from './phone.ts';

/** What a coach does with a page of the app, each deed as the screens do it. */
export class Coach {
  constructor(
    readonly phone: Phone,
    public page: Page,
  ) {}

  get app() {
    return this.page.app;
  }

  /** The practice that is under way. */
  get practice() {
    return this.app.practices.openPractice.value;
  }

  /** The round that is played or waits, or the last one. */
  get round(): OpenRound {
    const round = this.app.actions.lastRound(this.app.practices.practice.value);
    if (!round) throw new Error('no round is set');
    return round;
  }

  /** Adds players to the squad; what they are known by from then on. */
  async squad(...names: string[]): Promise<string[]> {
    await this.phone.do(() => this.app.squad.addPlayers(names.map((name) => ({ name }))));
    return names.map((name) => this.player(name));
  }

  player(name: string): string {
    const found = [...this.app.ledger.squad.value.values()].find((each) => each.name === name);
    if (!found) throw new Error(`nobody is called ${name}`);
    return found.id;
  }

  come(...names: string[]): Promise<void> {
    return this.phone.do(() => this.app.actions.come(...names.map((name) => this.player(name))));
  }

  leave(name: string): Promise<void> {
    return this.phone.do(() => this.app.actions.leave(this.player(name)));
  }

  /** Puts steps of a drill and its rounds after those of the block. */
  plan(...steps: (readonly [drill: string, rounds: number])[]): Promise<void> {
    const plan = this.app.actions.currentPlan();
    const more = steps.map(([drill, rounds]): Step => ({ drill, rounds, partners: 'keep' }));
    return this.phone.do(() =>
      this.app.actions.plan({ ...plan, seconds: 120, steps: [...plan.steps, ...more] }),
    );
  }

  /** Goes to the card of the coming round and presses Start. */
  async start(): Promise<void> {
    const { comingRound, actions, practices } = this.app;
    await this.phone.do(() => comingRound.setRound());
    await this.phone.do(() => {
      const round = actions.currentRound(practices.openPractice.value);
      if (!round || round.clock) throw new Error('no round waits for its start');
      actions.press('clock-started', round);
    });
  }

  /** Taps tiles one after the other, so many seconds apart: a letter, or a letter and a name. */
  async tap(tiles: readonly string[], apart = 14): Promise<void> {
    for (const tile of tiles) {
      await this.phone.pass(apart * 1000);
      const [letter = '', name] = tile.split(' ');
      this.app.actions.count(this.round, letter, name && this.player(name));
    }
    await this.phone.do(() => {});
  }

  /** Lets the clock run out. */
  async horn(): Promise<void> {
    const { clock } = this.round;
    if (clock) await this.phone.pass(Math.max(0, clock.start + clock.length * 1000 - Date.now()));
    await this.phone.pass(500);
  }

  settle(): Promise<void> {
    return this.phone.do(() => this.app.actions.press('round-settled', this.round));
  }

  /** Plays the coming round of the block: so many sets of each pair, by its letter. */
  async play(sets: Readonly<Record<string, number>> = {}): Promise<void> {
    await this.start();
    const tiles = Object.entries(sets).flatMap(([letter, count]) => Array(count).fill(letter));
    await this.tap(tiles);
    await this.horn();
    await this.settle();
  }

  close(): Promise<void> {
    return this.phone.do(() => this.app.actions.closePractice());
  }

  /** Opens the page of a practice that is over, as it is put right. */
  async takeOut(id: string): Promise<void> {
    await this.app.practices.takeOut(id);
    await this.phone.do(() => {});
  }

  /** Leaves that page. */
  putAway(): Promise<void> {
    return this.phone.do(() => this.app.practices.putAway());
  }
}
