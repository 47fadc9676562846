import { addDays } from '../../../core/calendar.ts';
import { starterDrills } from '../../../core/drill/starter-drills.ts';
import type { OpenRound, Practice } from '../../../core/ledger/practice.ts';
import type { Step } from '../../../core/round/block.ts';
import { withPlayer } from '../../../core/round/pairs.ts';
import { type Random, randomFrom } from '../../../demo-data/random.ts';
import type { Page } from '../phone/page.ts';
import { Phone, timeOf } from '../phone/phone.ts';
import { goTo } from './looked.ts';

const NAMES = ['Ada', 'Bruno', 'Chloe', 'Dario', 'Enya', 'Fritz', 'Gwen', 'Hugo'];
/** The phone's zone changes its clock on the day before: every walk goes through that night. */
const LAST_DAY = '2026-04-06';
const DRILLS = [
  'mini-rally',
  'long-rally',
  'volley-to-volley',
  'soft-volleys',
  'lob-and-overhead',
  'serve-return-next',
  'deep-past-the-markers',
];

/** What is asked of a walk at its stops. */
export interface Holds {
  /** A round is on the court of this page. */
  tiles(phone: Phone, page: Page): Promise<void>;
  /** No clock runs. */
  screens(phone: Phone, page: Page, screens: readonly Screen[]): Promise<void>;
  /** The walk is over: all is packed and worked out. */
  whole(phone: Phone, page: Page): Promise<void>;
}

/** The screens whose numbers are looked at. */
export const screens = ['today', 'week', 'player', 'review'] as const;
export type Screen = (typeof screens)[number];

/**
 * A coach and a phone over some weeks, led by chance: practices on some days, some days two, blocks
 * that change, children who are late or leave, slips of every kind, and whatever a phone does to an
 * app. The same seed is the same walk.
 */
export class Walk {
  readonly #random: Random;
  readonly #phone: Phone;
  readonly #holds: Holds;
  /** What was done, for whoever looks for what went wrong. */
  readonly done: string[] = [];

  readonly #days: readonly string[];

  constructor(script: string, seed: number, days: number, holds: Holds) {
    this.#random = randomFrom(seed);
    this.#days = Array.from({ length: days }, (_, at) => addDays(LAST_DAY, at + 1 - days));
    this.#phone = new Phone(script, `${this.#days[0]} 09:00`, seed);
    this.#holds = holds;
  }

  end(): void {
    this.#phone.end();
  }

  async go(): Promise<void> {
    await this.#phone.open();
    const count = 4 + this.#random.below(NAMES.length - 3);
    this.#app.squad.addPlayers(NAMES.slice(0, count).map((name) => ({ name })));
    await this.#phone.do(() => {});
    if (this.#random.chance(0.3)) {
      const courts = 1 + this.#random.below(2);
      this.#note(`courts ${courts}`);
      await this.#phone.do(() =>
        this.#app.ledger.append({ kind: 'squad-set', courts, size: 'full', units: 'metres' }),
      );
    }
    for (const date of this.#days) await this.#day(date);
    await this.#sleepUntil(`${addDays(LAST_DAY, 2)} 09:00`);
    await this.#restart();
    await this.#phone.worked(this.#page);
    await this.#holds.whole(this.#phone, this.#page);
  }

  /** The page that the coach looks at. */
  get #page(): Page {
    return this.#phone.pages.at(-1)!;
  }

  get #app() {
    return this.#page.app;
  }

  get #practice(): Practice | undefined {
    return this.#app.practices.openPractice.value;
  }

  get #round(): OpenRound | undefined {
    return this.#app.actions.currentRound(this.#practice);
  }

  #note(what: string): void {
    this.done.push(`${new Date().toString().slice(4, 24)} ${what}`);
  }

  #one<T>(items: readonly T[]): T {
    return items[this.#random.below(items.length)]!;
  }

  async #do(what: string, deed: () => unknown): Promise<void> {
    this.#note(what);
    await this.#phone.do(deed);
  }

  async #sleepUntil(then: string): Promise<void> {
    if (timeOf(then) <= Date.now()) return;
    this.#note(`sleeps until ${then}`);
    await this.#phone.sleepUntil(then);
  }

  async #restart(): Promise<void> {
    this.#note('restart');
    await this.#phone.restart();
  }

  async #day(date: string): Promise<void> {
    const { chance, below } = this.#random;
    if (chance(0.35)) return;
    const hour = this.#one(['09', '17', '18', '22', '23']);
    const time = `${date} ${hour}:${10 + below(45)}`;
    if (timeOf(time) <= Date.now()) return;
    const way = below(4);
    if (way === 0) {
      await this.#sleepUntil(time);
      await this.#restart();
    } else if (way === 1 && timeOf(time) - Date.now() < 30 * 3_600_000) {
      this.#note(`stays awake until ${time}`);
      await this.#phone.until(time);
    } else await this.#sleepUntil(time);
    if (chance(0.3)) await this.#putRight();
    if (chance(0.15)) await this.#secondWindow();
    await this.#practise();
    if (chance(0.25)) {
      if (chance(0.5)) await this.#phone.pass(3_600_000, 60_000);
      if (this.#practice && chance(0.7)) await this.#close();
      await this.#practise();
    }
    await this.#hold();
  }

  /** Numbers of some screen are held against the entries, on any page, where no clock runs. */
  async #hold(): Promise<void> {
    if (this.#app.actions.isRunning(this.#round)) return;
    const looked = screens.filter(() => this.#random.chance(0.4));
    this.#note(`looks at ${looked}`);
    await this.#holds.screens(this.#phone, this.#anyPage, looked);
  }

  async #secondWindow(): Promise<void> {
    if (this.#phone.pages.length > 1) return;
    this.#note('second window');
    await this.#phone.open();
  }

  async #practise(): Promise<void> {
    const { chance, below } = this.#random;
    const { actions } = this.#app;
    const squad = [...this.#app.ledger.squad.value.keys()];
    const coming = chance(0.4) ? squad : squad.filter(() => chance(0.8));
    await this.#do(`come ${coming.length}`, () => actions.come(...coming));
    if (chance(0.3)) await this.#leave();
    if (chance(0.1)) return; // Names were ticked, and nothing came of it.
    const steps = Array.from({ length: 1 + below(2) }, () => this.#step());
    await this.#do(`plan ${steps.map(({ drill, rounds }) => `${drill}×${rounds}`)}`, () =>
      actions.plan({ ...actions.currentPlan(), steps, seconds: this.#one([60, 90, 120]) }),
    );
    for (let rounds = 0; rounds < 3; rounds++) {
      if (chance(0.25)) await this.#editBlock();
      if (chance(0.25)) await this.#comeOrLeave();
      if (chance(0.1)) {
        const drill = this.#one(DRILLS);
        const seconds = 1 + this.#random.below(10) / 10;
        await this.#do(`tempo ${drill} ${seconds}`, () =>
          this.#app.tempo.keepCheck('tempo-checked', drill, seconds),
        );
      }
      if (!(await this.#play())) break;
    }
    if (chance(0.5)) await this.#close();
  }

  #step(): Step {
    const { chance, below } = this.#random;
    const drill = this.#one(DRILLS);
    const { rule } = starterDrills.find(({ id }) => id === drill)!;
    return {
      drill,
      rounds: 1 + below(2),
      partners: chance(0.5) ? 'keep' : 'turn',
      ...(rule === 'in-a-row' && chance(0.2) && { size: this.#one([6, 8]) }),
    };
  }

  async #close(): Promise<void> {
    if (!this.#practice) return;
    await this.#do('close', () => this.#app.actions.closePractice());
    if (this.#random.chance(0.15)) {
      await this.#do('reopen', () => this.#app.actions.reopenPractice());
    }
  }

  async #editBlock(): Promise<void> {
    const { actions } = this.#app;
    const plan = actions.currentPlan();
    const { steps } = plan;
    const at = this.#random.below(Math.max(1, steps.length));
    const ways: Step[][] = [
      steps.toSpliced(at, 1),
      [...steps, this.#step()],
      steps.toReversed(),
      steps.map((step, index) =>
        index === at ? { ...step, rounds: 1 + (step.rounds % 3) } : step,
      ),
      [this.#step()],
    ];
    const next = this.#one(ways);
    await this.#do(`block ${next.map(({ drill, rounds }) => `${drill}×${rounds}`)}`, () =>
      actions.plan({ ...plan, steps: next }),
    );
  }

  async #leave(): Promise<void> {
    const here = this.#practice?.here ?? [];
    if (here.length < 3) return;
    const player = this.#one(here);
    await this.#do(`leaves ${player}`, () => this.#app.actions.leave(player));
  }

  async #comeOrLeave(): Promise<void> {
    const here = this.#practice?.here ?? [];
    const away = [...this.#app.ledger.squad.value.keys()].filter((each) => !here.includes(each));
    if (away.length > 0 && this.#random.chance(0.6)) {
      const player = this.#one(away);
      await this.#do(`comes ${player}`, () => this.#app.actions.come(player));
    } else await this.#leave();
  }

  /** A round from its card to what becomes of it; false where there is none to play. */
  async #play(): Promise<boolean> {
    const { chance, below } = this.#random;
    if (this.#round?.clock) await this.#leaveRound();
    await goTo(this.#phone, this.#page, 'court');
    const letters = this.#app.comingRound.playingPairs().map(({ letter }) => letter);
    const calls =
      chance(0.2) && this.#app.comingRound.comingRound.value?.drill?.rule !== 'on-target';
    await this.#do('set', () =>
      this.#app.comingRound.setRound({
        ...(calls && { called: letters.filter(() => chance(0.7)) }),
      }),
    );
    if (!this.#round || this.#round.clock) return false;
    if (chance(0.2) && this.#practice && this.#practice.here.length > 3) {
      const pairs = this.#app.comingRound.comingRound.value?.pairs ?? [];
      const everyone = pairs.flatMap(({ players }) => players);
      const swapped = withPlayer(pairs, this.#one(everyone), this.#one(everyone));
      await this.#do('swap', () => this.#app.comingRound.setRound({ pairs: swapped }));
    }
    await this.#do(`start ${this.#round.terms.drill}`, () =>
      this.#app.actions.press('clock-started', this.#round!),
    );
    const deeds = below(14);
    for (let deed = 0; deed < deeds; deed++) {
      if (!this.#app.actions.isRunning(this.#round)) break;
      await this.#inRound();
      if (chance(0.1)) await this.#holds.tiles(this.#phone, this.#page);
    }
    await this.#horn();
    while (chance(0.3)) await this.#tap();
    await this.#holds.tiles(this.#phone, this.#page);
    if (chance(0.1)) await this.#restart();
    await this.#settle();
    if (chance(0.1)) await this.#hold();
    return true;
  }

  async #inRound(): Promise<void> {
    const { chance, below } = this.#random;
    const { actions } = this.#app;
    await this.#phone.pass(400 + below(chance(0.8) ? 12_000 : 25_000));
    const round = this.#round;
    if (!round?.clock) return;
    const what = below(40);
    if (what < 26) await this.#tap();
    else if (what < 30) await this.#takeBack();
    else if (what === 30) {
      await this.#do('pause', () => actions.press('clock-paused', round));
      await this.#phone.pass(below(90_000));
      if (chance(0.2)) await this.#restart();
      await this.#do('resume', () => this.#app.actions.press('clock-resumed', this.#round!));
    } else if (what === 31) await this.#do('extend', () => actions.extend(round, 30));
    else if (what === 32) await this.#do('stop', () => actions.press('clock-stopped', round));
    else if (what === 33) await this.#restart();
    else if (what === 34) await this.#comeOrLeave();
    else if (what === 35) await this.#secondWindow();
    else if (what === 36) await this.#stopOrJoin(round);
    else if (what === 37) {
      this.#note('sleeps half a minute');
      await this.#phone.sleepUntil(Date.now() + 30_000);
    } else if (what === 38) {
      // The clock of the phone is set, and the page was looked at all the while.
      this.#note('the clock is set');
      this.#phone.setClock(Date.now() + 600_000);
      await this.#phone.pass(2_000);
    } else if (what === 39 && chance(0.3)) {
      this.#note('sleeps until the morning after');
      await this.#phone.sleepUntil(Date.now() + 11 * 3_600_000);
    }
  }

  async #stopOrJoin(round: OpenRound): Promise<void> {
    const { actions } = this.#app;
    const playing = this.#app.sides.shownTallies(round).map(({ pair }) => pair);
    const pair = playing.length > 0 ? this.#one(playing) : undefined;
    if (!pair || !round.clock) return;
    const second = (this.#app.clock.now() - round.clock.start) / 1000;
    const other = playing.find((each) => each.letter !== pair.letter && each.players.length === 2);
    if (pair.players.length === 3) {
      await this.#do(`a trio's player stops in ${pair.letter}`, () =>
        actions.joinPair(round, undefined, { ...pair, players: pair.players.slice(0, 2) }),
      );
      return;
    }
    if (round.clock.pauses.length > 0) return; // The second would be another one.
    await this.#do(`stops ${pair.letter}`, () => actions.stopPair(round, pair.letter, second));
    if (other && this.#random.chance(0.6)) {
      await this.#phone.pass(3_000);
      await this.#do(`joins ${other.letter}`, () =>
        actions.joinPair(this.#round!, pair.players[0], other),
      );
    }
  }

  /** A page of those that are open: what one window counts the other shows. */
  get #anyPage(): Page {
    return this.#one(this.#phone.pages);
  }

  async #tap(): Promise<void> {
    const page = this.#anyPage;
    const { actions, practices, sides } = page.app;
    const round = actions.currentRound(practices.openPractice.value);
    if (!round?.clock) return;
    const tallies = sides
      .shownTallies(round)
      .filter(({ pair }) => !round.called.includes(pair.letter));
    const tiles = tallies.flatMap((tally) => sides.sidesOf(round, tally));
    if (tiles.length === 0) return;
    const side = this.#one(tiles);
    await this.#do(`taps ${side.letter} ${side.player ?? ''}`, () => {
      const all = [...page.root.querySelectorAll<HTMLElement>('.tile-count')];
      const tile = all[tiles.indexOf(side)];
      // The tile itself where it is drawn, as a finger would.
      if (tile && all.length === tiles.length) {
        const { PointerEvent } = page.window;
        tile.dispatchEvent(new PointerEvent('pointerdown', { bubbles: true, button: 0 }) as never);
      } else sides.countOn(round, side);
    });
    if (this.#random.chance(0.1)) {
      await this.#phone.pass(300);
      await this.#do('taps twice', () => {
        const again = actions.currentRound(practices.openPractice.value);
        if (again) sides.countOn(again, side);
      });
    }
  }

  async #takeBack(): Promise<void> {
    const { sides } = this.#app;
    const round = this.#round!;
    const tiles = sides.shownTallies(round).flatMap((tally) => sides.sidesOf(round, tally));
    if (tiles.length === 0) return;
    const side = this.#one(tiles);
    await this.#do(`takes back ${side.letter}`, () => sides.takeBackOn(round, side));
  }

  async #horn(): Promise<void> {
    const { clock } = this.#round ?? {};
    if (!clock) return;
    if (clock.pauses.at(-1) && clock.pauses.at(-1)?.to === undefined) {
      await this.#do('resume', () => this.#app.actions.press('clock-resumed', this.#round!));
    }
    for (let waits = 0; waits < 12 && this.#app.actions.isRunning(this.#round); waits++) {
      await this.#phone.pass(60_000);
    }
    await this.#phone.pass(500);
  }

  async #settle(): Promise<void> {
    const { chance } = this.#random;
    const round = this.#round;
    if (!round?.clock) return;
    await goTo(this.#phone, this.#page, 'settle', round.id);
    const id = round.id;
    await this.#correctRound(() => this.#app.practices.roundAt(id)?.round);
    if (chance(0.1)) {
      this.#note('leaves it for later');
      return;
    }
    await this.#leaveRound();
    if (chance(0.06)) {
      await this.#do('strikes the round', () =>
        this.#app.actions.press('round-struck', this.#app.practices.roundAt(id)!.round),
      );
      if (chance(0.4)) {
        await this.#do('restores it', () =>
          this.#app.actions.press('round-restored', this.#app.practices.roundAt(id)!.round),
        );
      }
    }
  }

  async #leaveRound(): Promise<void> {
    const round = this.#round;
    if (!round?.clock || this.#app.actions.isRunning(round)) return;
    const kind = this.#random.chance(0.8) ? 'round-settled' : 'round-skipped';
    await this.#do(kind, () => this.#app.actions.press(kind, round));
  }

  /** What settle can say of a round, some of it. */
  async #correctRound(round: () => OpenRound | undefined): Promise<void> {
    const { chance, below } = this.#random;
    const { actions } = this.#app;
    for (const { pair } of round()?.tallies ?? []) {
      for (const mark of round()?.marks[pair.letter] ?? []) {
        if ((mark.late || mark.doubtful) && !mark.takenBack && chance(0.7)) {
          const stands = chance(0.5);
          await this.#do(`judges ${stands}`, () => actions.judge(round()!, mark.id, stands));
        }
      }
      if (round()?.called.includes(pair.letter)) {
        const called = chance(0.8) ? below(9) : undefined;
        await this.#do(`calls ${pair.letter} ${called}`, () =>
          actions.callCount(round()!, pair.letter, called),
        );
      } else if (chance(0.3)) {
        const by = this.#one([-2, -1, 1, 2]);
        const player = round()?.terms.rule === 'on-target' ? this.#one(pair.players) : undefined;
        for (let press = 0; press < Math.abs(by); press++) {
          await this.#do(`corrects ${pair.letter} ${Math.sign(by)}`, () =>
            actions.correct(round()!, pair.letter, Math.sign(by), player),
          );
        }
      }
    }
    if (chance(0.06)) {
      const { seconds } = round()!;
      const from = 10 * below(3);
      await this.#do(`nobody watched from ${from}`, () =>
        actions.watchStretch(round()!, { from, to: this.#one([from + 20, seconds]) }, false),
      );
    }
    if (chance(0.1) && round()?.turns) {
      await this.#do('roles did not turn', () => actions.turnRoles(round()!, undefined));
    }
    if (chance(0.08)) await this.#correctNames(round);
  }

  async #correctNames(round: () => OpenRound | undefined): Promise<void> {
    const pairs = round()?.tallies.map(({ pair }) => pair) ?? [];
    const players = pairs.flatMap((pair) => pair.players);
    // One who was in two pairs of a round could not be told from himself.
    if (pairs.length === 0 || new Set(players).size < players.length) return;
    const other = this.#one([...this.#app.ledger.squad.value.keys()]);
    const changed = withPlayer(pairs, this.#one(players), other);
    await this.#do('puts names right', () => this.#app.actions.correctPairs(round()!, changed));
  }

  /** A practice that is over is taken out and put right, from its own page. */
  async #putRight(): Promise<void> {
    const { chance } = this.#random;
    const over = this.#app.practices.summaries.value
      .map(({ practice }) => practice)
      .filter((id) => id !== this.#practice?.id);
    if (over.length === 0 || this.#app.actions.isRunning(this.#round)) return;
    const id = this.#one(over);
    this.#note(`takes out ${id}`);
    await goTo(this.#phone, this.#page, 'practice', id);
    const practice = () => this.#app.practices.practiceAt(id);
    const rounds = practice()?.rounds.filter(({ clock }) => clock) ?? [];
    if (rounds.length > 0 && chance(0.8)) {
      const which = this.#one(rounds).id;
      await goTo(this.#phone, this.#page, 'settle', which);
      const round = () => practice()?.rounds.find((each) => each.id === which);
      await this.#correctRound(round);
      if (chance(0.15)) {
        const kind = round()?.struck ? 'round-restored' : 'round-struck';
        await this.#do(kind, () => this.#app.actions.press(kind, round()!));
      } else if (chance(0.5)) {
        await this.#do('settles it', () => this.#app.actions.press('round-settled', round()!));
      }
      await goTo(this.#phone, this.#page, 'practice', id);
    }
    if (chance(0.4)) {
      const player = this.#one([...this.#app.ledger.squad.value.keys()]);
      const there = chance(0.5);
      await this.#do(`presence ${player} ${there}`, () =>
        this.#app.actions.correctPresence(practice()!, player, there),
      );
    }
    if (chance(0.08)) {
      await this.#do('strikes or restores the practice', () =>
        this.#app.actions.strikePractice(practice()!),
      );
    }
    if (chance(0.2)) await this.#restart();
    if (chance(0.5)) await this.#hold();
    await goTo(this.#phone, this.#page);
  }
}
