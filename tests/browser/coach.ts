import { expect, type Locator, type Page } from 'playwright/test';
import type { Entry, Saying } from '../../core/ledger/entry.ts';
import { entriesOn } from '../faults/records.ts';

/** What a coach does with the app, in the words on the screen. */
export class Coach {
  constructor(readonly page: Page) {}

  button(name: string | RegExp): Locator {
    return this.page.getByRole('button', { name });
  }

  async open(): Promise<void> {
    await this.page.goto('./');
    await this.page.getByRole('heading', { level: 1 }).waitFor();
  }

  /** Goes to an address of the app by its hash, as a bookmark would, and waits for what it shows. */
  async visit(address: string): Promise<void> {
    const { page } = this;
    if (page.url() === 'about:blank') await page.goto(`./#/${address}`);
    else {
      // The heading of the screen before is gone once the page has heard of the new address.
      await page.evaluate((hash) => {
        if (location.hash === hash) return;
        const heard = new Promise((resolve) =>
          addEventListener('hashchange', resolve, { once: true }),
        );
        location.hash = hash;
        return heard;
      }, `#/${address}`);
    }
    await page.locator('h1, .wall').first().waitFor();
  }

  /** Opens what the week, or a player's page, folds away; it stays open as long as the page. */
  async unfold(): Promise<void> {
    await this.page.locator('.fold[aria-expanded=false]').tap();
  }

  async pasteSquad(csv: string): Promise<void> {
    await this.visit('squad');
    await this.page.getByLabel('Paste the list here').fill(csv);
    await this.button('Take these names').tap();
  }

  async comes(player: string): Promise<void> {
    await this.button(player).and(this.page.locator('[aria-pressed=false]')).first().tap();
  }

  /** Chooses the drills of the block by name, one round each unless said. */
  async planBlock(drills: readonly { name: string; rounds?: number }[]): Promise<void> {
    await this.visit('block');
    for (const { name, rounds = 1 } of drills) {
      await this.button(`Add ${name}`).tap();
      for (let more = 1; more < rounds; more++) await this.button(`Rounds of ${name} +`).tap();
    }
    await this.button('Done').tap();
  }

  async start(): Promise<void> {
    await this.button(/^Start/).tap();
    await this.page.getByRole('timer').waitFor();
  }

  /** The tile of a pair, or of a player where tiles are split, by a name on it. */
  tile(name: string): Locator {
    return this.page.locator('.tile-count').filter({ hasText: name });
  }

  async mark(name: string): Promise<void> {
    await this.tile(name).tap();
  }

  async takeBack(name: string): Promise<void> {
    await this.page
      .locator('.tile')
      .filter({ hasText: name })
      .getByRole('button', { name: /take back/ })
      .tap();
  }

  /** The pairs of the round that runs, in their order, with the names on their tiles. */
  async pairs(): Promise<string[][]> {
    const tiles = await this.page.locator('.tile-pair').all();
    return Promise.all(
      tiles.map((tile) => tile.locator('.tile-name .pair-call').allTextContents()),
    );
  }

  /** Stops the round. The app takes its question back after three seconds: then Stop is tapped again. */
  async stop(): Promise<void> {
    const sure = this.button('Stop now?');
    await expect(async () => {
      if (await this.page.locator('[data-over]').isVisible()) return;
      if (!(await sure.isVisible())) {
        await this.page.getByRole('button', { name: 'Stop', exact: true }).tap({ timeout: 2_000 });
      }
      await sure.tap({ timeout: 2_000 });
    }).toPass();
  }

  /** Every mark that was tapped shows as saved. The first of a tile has no disc until its frame is seen. */
  async saved(): Promise<void> {
    await this.page.waitForFunction(() => {
      const discs = [...document.querySelectorAll('.tile-saved')];
      const isSaved = (disc: Element | null) => disc?.getAttribute('data-saved') === 'true';
      const tiles = [...document.querySelectorAll('.tile')].filter(
        (tile) => Number.parseInt(tile.querySelector('.tile-sets')?.textContent ?? '', 10) > 0,
      );
      return (
        discs.length > 0 &&
        discs.every(isSaved) &&
        tiles.every((tile) => isSaved(tile.querySelector('.tile-saved')))
      );
    });
  }

  /** Such entries lie on the disk: before that a reload may lose what no screen called saved. */
  async kept(saying: Partial<Saying>, times = 1): Promise<void> {
    const like = (entry: Entry) =>
      Object.entries(saying).every(([name, value]) => Reflect.get(entry, name) === value);
    const there = async () => (await entriesOn(this.page, saying.kind)).filter(like).length;
    await expect.poll(there, saying.kind).toBeGreaterThanOrEqual(times);
  }

  /** Loads the demo by a button that is in sight; the app starts anew with it, at Today. */
  async loadDemo(button = 'Load the demo'): Promise<void> {
    const anew = this.page.waitForEvent('load', { timeout: 60_000 });
    await this.button(button).tap();
    await anew;
    await this.button('Remove the demo').first().waitFor();
  }

  /** From an empty app to a round that waits for its Start, with the players given. */
  async reachCourt(players: readonly string[], drills: readonly string[]): Promise<void> {
    await this.pasteSquad(players.join('\n'));
    await this.visit('');
    await this.button('Everyone is here').tap();
    await this.planBlock(drills.map((name) => ({ name })));
    await this.button('Go to the court').tap();
  }
}
