import { desk as deskEn } from '../../app/words/desk.en.ts';
import { desk as deskEs } from '../../app/words/desk.es.ts';
import { desk as deskFr } from '../../app/words/desk.fr.ts';
import { en } from '../../app/words/en.ts';
import { es } from '../../app/words/es.ts';
import { fr } from '../../app/words/fr.ts';
import { look as lookEn } from '../../app/words/look.en.ts';
import { look as lookEs } from '../../app/words/look.es.ts';
import { look as lookFr } from '../../app/words/look.fr.ts';
import { planning as planningEn } from '../../app/words/planning.en.ts';
import { planning as planningEs } from '../../app/words/planning.es.ts';
import { planning as planningFr } from '../../app/words/planning.fr.ts';
import { findings } from './axe.ts';
import { Coach } from './coach.ts';
import { expect, type Page, test } from './test.ts';

/*
 * For everybody: WCAG 2.2 AA as axe-core checks it (and its rules for target size and enhanced
 * contrast), on every screen and state, in both themes; and a round by keyboard alone.
 */

async function expectNothing(page: Page, where: string): Promise<void> {
  // At the end of the page no control lies under the bar that stays in sight.
  await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
  expect.soft(await findings(page), where).toEqual([]);
}

const PLAYERS = ['Pip', 'Juno', 'Odile', 'Bram', 'Suki'];

/** EVERY=1 walks each language in both themes; else each theme is walked, and each language. */
const EVERY = process.env.EVERY !== undefined;
const LANGUAGES = [
  { locale: 'en-GB', t: { ...en, ...deskEn }, planning: planningEn, look: lookEn },
  { locale: 'fr-FR', t: { ...fr, ...deskFr }, planning: planningFr, look: lookFr },
  { locale: 'es-MX', t: { ...es, ...deskEs }, planning: planningEs, look: lookEs },
];

for (const [place, { locale, t, planning, look }] of LANGUAGES.entries()) {
  for (const [turn, theme] of (['light', 'dark'] as const).entries()) {
    if (!EVERY && turn !== place % 2) continue;
    test.describe(`axe finds nothing, ${locale}, ${theme}`, () => {
      // No colour is looked at while it changes.
      test.use({ locale, colorScheme: theme, contextOptions: { reducedMotion: 'reduce' } });

      test('on any screen of a full ledger', async ({ page }) => {
        const coach = new Coach(page);
        await coach.open();
        await expectNothing(page, 'an empty app');
        for (const address of [
          ...['squad', 'block', 'players', 'week', 'review', 'coverage', 'handover/club'],
        ]) {
          await coach.visit(address);
          await expectNothing(page, `${address} of an empty app`);
        }
        await coach.visit('');
        await coach.button(t.today.tryDemo).tap();
        await expect(page.getByRole('heading', { name: t.today.here })).toBeVisible({
          timeout: 30_000,
        });
        for (const address of [
          ...['', 'squad', 'block', 'players', 'week', 'settings', 'drill', 'court', 'help'],
          ...['drill/lob-and-overhead', 'review', 'coverage', 'propose', 'sheet', 'wall'],
          ...['tempo/lob-and-overhead', 'settle/none', 'player/none', 'nowhere', 'handover'],
          ...['numbers', 'glance', 'neglected', 'together', 'sizes', 'season', 'line/none'],
          ...['handover/show', 'handover/read', 'handover/club', 'handover/card/none'],
        ]) {
          await coach.visit(address);
          await expectNothing(page, address);
        }
        await coach.visit('coverage');
        await page.getByLabel(planning.coverage.whose).selectOption('Pip');
        await expect(page.getByRole('caption')).toContainText('Pip');
        await expectNothing(page, 'the coverage of a player');
        for (const address of ['review', 'players']) {
          await coach.visit(address);
          await page.getByRole('link', { name: 'Pip' }).tap();
          await page.getByRole('heading', { level: 1, name: 'Pip' }).waitFor();
          await expectNothing(page, `a player of ${address}`);
        }
        await page.locator('a[href*="handover/give"]').tap();
        await page.getByRole('article', { name: 'Pip' }).waitFor();
        await expectNothing(page, 'a card to take home');
        await page.goBack();
        await coach.button(look.player.hand('Pip')).tap();
        await expectNothing(page, 'a handed phone');
      });

      test('on the court in any state', async ({ page }) => {
        await page.clock.install();
        const coach = new Coach(page);
        await coach.visit('squad');
        await page.getByLabel(t.squad.pasted).fill(PLAYERS.join('\n'));
        await coach.button(t.squad.takePasted).tap();
        await coach.visit('');
        await coach.button(t.today.allHere).tap();
        await coach.visit('block');
        for (const id of ['mini-rally', 'wide-past-the-markers'] as const) {
          await coach.button(planning.block.add(t.drills[id].name)).tap();
        }
        await coach.visit('');
        await coach.button(t.today.toCourt).tap();
        await expectNothing(page, 'before a round');
        const start = async () => {
          await coach.button(t.court.start).tap();
          await page.getByRole('timer').waitFor();
        };
        await start();
        await coach.mark('Pip');
        await coach.saved();
        await expectNothing(page, 'a running round');
        await coach.button(t.court.here).tap();
        await expectNothing(page, 'a running round with who is here');
        await coach.button(t.done).tap();
        await coach.button(t.court.pause).tap();
        await expectNothing(page, 'a paused round');
        await coach.button(t.court.resume).tap();
        await page.clock.fastForward(130_000);
        await coach.mark('Odile');
        await expectNothing(page, 'after the horn');
        await coach.button(t.court.settle).tap();
        await expect(page.getByRole('heading', { level: 1 })).toHaveText(t.settle.title);
        await expectNothing(page, 'settle');
        await coach.button(t.settle.next).tap();
        await start();
        await expectNothing(page, 'split tiles');
        await page.clock.fastForward(130_000);
        await coach.button(t.court.settle).tap();
        await coach.button(t.done).tap();
        await expectNothing(page, 'the block is done');
        // Left by a press of two seconds only: the last.
        await coach.visit('pair/A');
        await expectNothing(page, "a pair's own screen");
      });
    });
  }
}

test('a whole round is played by keyboard alone', async ({ page }) => {
  await page.clock.install();
  const coach = new Coach(page);
  await coach.reachCourt(PLAYERS, ['Mini rally']);
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
  await reach(/^Change the count of .*Suki/);
  await reach(/^One set more for .*Suki/);
  await reach(/^Done/);
  await expect(page.getByRole('heading', { name: 'The block is done' })).toBeVisible();
});
