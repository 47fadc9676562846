import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, type Page, test } from 'playwright/test';
import { Coach } from './coach.ts';

/*
 * For everybody: WCAG 2.2 AA as axe-core checks it (and its rules for target size and enhanced
 * contrast), on every screen and state, in both themes; and a round by keyboard alone.
 */

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What axe finds on the page as it stands, one line a finding. */
async function findings(page: Page): Promise<string[]> {
  await page.evaluate(axe);
  return page.evaluate(async (tags) => {
    interface Finding {
      id: string;
      nodes: { target: string[]; failureSummary: string }[];
    }
    const { axe } = window as unknown as {
      axe: { run: (where: Document, how: object) => Promise<{ violations: Finding[] }> };
    };
    const { violations } = await axe.run(document, {
      runOnly: { type: 'tag', values: tags },
      rules: { 'color-contrast-enhanced': { enabled: true } },
    });
    return violations.flatMap((found) =>
      found.nodes.map((node) => `${found.id} ${node.target.join(' ')}: ${node.failureSummary}`),
    );
  }, TAGS);
}

async function expectNothing(page: Page, where: string): Promise<void> {
  // At the end of the page no control lies under the bar that stays in sight.
  await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
  expect.soft(await findings(page), where).toEqual([]);
}

const PLAYERS = ['Pip', 'Juno', 'Odile', 'Bram', 'Suki'];

for (const theme of ['light', 'dark'] as const) {
  test(`axe finds nothing on any screen of a full ledger, ${theme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme: theme });
    const coach = new Coach(page);
    await coach.open();
    await expectNothing(page, 'an empty app');
    await coach.button('Look around with an invented squad').tap();
    await expect(page.getByRole('heading', { name: 'Who is here' })).toBeVisible({
      timeout: 30_000,
    });
    const addresses = ['', 'squad', 'block', 'players', 'week', 'settings', 'drill'];
    const further = ['drill/lob-and-overhead', 'court', 'review', 'coverage', 'propose', 'sheet'];
    for (const address of [...addresses, ...further]) {
      await coach.visit(address);
      await expectNothing(page, address);
    }
    await coach.visit('players');
    await page.getByRole('link', { name: 'Pip' }).tap();
    await page.getByRole('heading', { level: 1, name: 'Pip' }).waitFor();
    await expectNothing(page, 'a player');
    await coach.button(/^Hand the phone/).tap();
    await expectNothing(page, 'a handed phone');
  });

  test(`axe finds nothing on the court in any state, ${theme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme: theme });
    const coach = new Coach(page);
    await coach.reachCourt(PLAYERS, ['Mini rally', 'Wide past the markers']);
    await expectNothing(page, 'before a round');
    await page.clock.install();
    await coach.start();
    await coach.mark('Pip');
    await coach.saved();
    await expectNothing(page, 'a running round');
    await coach.button('Who is here').tap();
    await expectNothing(page, 'a running round with who is here');
    await coach.button('Done').tap();
    await coach.button('Pause').tap();
    await expectNothing(page, 'a paused round');
    await coach.button('Go on').tap();
    await page.clock.fastForward(130_000);
    await coach.mark('Odile');
    await expectNothing(page, 'after the horn');
    await coach.button('Put counts right').tap();
    await expectNothing(page, 'settle');
    await coach.button('Next round').tap();
    await coach.start();
    await expectNothing(page, 'split tiles');
    await page.clock.fastForward(130_000);
    await coach.button('Put counts right').tap();
    await coach.button('Done').tap();
    await expectNothing(page, 'the block is done');
  });
}

test('a whole round is played by keyboard alone', async ({ page }) => {
  const coach = new Coach(page);
  await coach.reachCourt(PLAYERS, ['Mini rally']);
  await page.clock.install();
  /** Tabs on until a control with this name has the focus, then presses a key. */
  const reach = async (name: RegExp, key = 'Enter') => {
    for (let step = 0; step < 60; step++) {
      await page.keyboard.press('Tab');
      const focused = await page.evaluate(
        () =>
          document.activeElement?.getAttribute('aria-label') ?? document.activeElement?.textContent,
      );
      if (focused && name.test(focused)) {
        await page.keyboard.press(key);
        return;
      }
    }
    throw new Error(`no control called ${name} is reached by Tab`);
  };
  await reach(/^Start/);
  await page.getByRole('timer').waitFor();
  await page.clock.fastForward(10_000);
  await reach(/Pip.*0 sets/);
  await expect(coach.tile('Pip')).toHaveAccessibleName(/\b1 set\b/);
  await page.clock.fastForward(10_000);
  await page.keyboard.press('Enter');
  await expect(coach.tile('Pip')).toHaveAccessibleName(/\b2 sets\b/);
  await reach(/take back the last set of .*Pip/);
  await expect(coach.tile('Pip')).toHaveAccessibleName(/\b1 set\b/);
  await page.clock.fastForward(120_000);
  await reach(/^Put counts right/);
  await reach(/^One set more for .*Suki/);
  await reach(/^Done/);
  await expect(page.getByRole('heading', { name: 'The block is done' })).toBeVisible();
});
