import { en } from '../../app/words/en.ts';
import { es } from '../../app/words/es.ts';
import { fr } from '../../app/words/fr.ts';
import { quality as qualityEn } from '../../app/words/quality.en.ts';
import { quality as qualityEs } from '../../app/words/quality.es.ts';
import { quality as qualityFr } from '../../app/words/quality.fr.ts';
import { findings } from './axe.ts';
import { Coach } from './coach.ts';
import { openLookedAt } from './looked-at-season.ts';
import { NOON, openPlanted } from './planted-round.ts';
import { expect, type Page, test } from './test.ts';
import { tooWide } from './too-wide.ts';

/*
 * After practice: quality beside quantity, care, effort. For everybody, in every language and size.
 */

const WAYS = [
  { locale: 'en-GB', theme: 'light', t: en, q: qualityEn, width: 390, text: '100%' },
  { locale: 'fr-FR', theme: 'dark', t: fr, q: qualityFr, width: 320, text: '100%' },
  { locale: 'es-MX', theme: 'light', t: es, q: qualityEs, width: 320, text: '200%' },
] as const;

async function expectNothing(page: Page, where: string): Promise<void> {
  await page.evaluate(() => {
    for (const more of document.querySelectorAll('details')) more.open = true;
    scrollTo(0, document.documentElement.scrollHeight);
  });
  expect.soft(await findings(page), `axe: ${where}`).toEqual([]);
  // What every screen has, and what a player's page had before, is for their own tests.
  const wide = (await tooWide(page)).filter((each) => !/^DIV\.own-measure/.test(each));
  expect.soft(wide, `too wide: ${where}`).toEqual([]);
}

for (const { locale, theme, t, q, width, text } of WAYS) {
  test.describe(`${locale}, ${theme}, ${width} px, text ${text}`, () => {
    test.use({
      ...{ locale, colorScheme: theme, viewport: { width, height: 640 } },
      contextOptions: { reducedMotion: 'reduce' },
    });
    const large = (page: Page) =>
      page.evaluate((size) => {
        document.documentElement.style.fontSize = size;
      }, text);

    test('axe finds nothing on the screens of quality, care and effort, and nothing is cut', async ({
      page,
    }) => {
      await page.clock.install({ time: NOON });
      await openLookedAt(page, 'quality');
      await large(page);
      await page.getByRole('heading', { name: q.volume.title }).waitFor();
      await expectNothing(page, 'quality');
      const coach = new Coach(page);
      await coach.visit('quality/player-4');
      await page.getByRole('heading', { name: q.care.title }).waitFor();
      await expectNothing(page, 'quality of a player');
      await coach.visit('effort');
      await page.getByRole('heading', { name: q.effort.title }).waitFor();
      await expectNothing(page, 'effort');
      await coach.visit('player/player-4');
      await page.getByRole('heading', { name: q.effort.ask }).waitFor();
      await expectNothing(page, 'a player’s page');
      await coach.visit('block');
      await page.getByLabel(q.focus.ofBlock).selectOption(t.foci.recovery);
      await page.getByText(q.means.recovery.told).waitFor();
      await expectNothing(page, 'the block');
      await coach.visit('drill/mini-rally');
      await page.getByLabel(q.focus.ofDrill).selectOption(t.foci.stance);
      await expectNothing(page, 'a drill');
      await coach.visit('propose');
      await page.getByText(t.foci.recovery).first().waitFor();
      await expectNothing(page, 'the proposal');
    });

    test('axe finds nothing on a round that asks for a look', async ({ page }) => {
      await page.clock.install({ time: NOON });
      const pairs = [
        ['Pip', 'Juno'],
        ['Odile', 'Bram'],
      ];
      await openPlanted(page, { pairs, focus: 'split-step', checks: 6 });
      await large(page);
      await page.locator('.look').waitFor();
      await expectNothing(page, 'nobody asked for');
      while (!(await page.locator('.look[data-asked]').isVisible())) await page.clock.runFor(500);
      await page.clock.runFor(600);
      await page.getByRole('button', { name: t.looks.is.no, exact: true }).tap();
      await expectNothing(page, 'asked and answered');
    });
  });
}

test('the coach reads what slips and what holds, who agrees, and the player only own times', async ({
  page,
}) => {
  await page.clock.install({ time: NOON });
  await openLookedAt(page, 'quality');
  const part = (name: string) =>
    page.locator('section.part').filter({ has: page.getByRole('heading', { level: 2, name }) });
  await expect(part('Back in place in time?')).toContainText('▼ slipping');
  await expect(part('Racket up?')).toContainText('no clear change');
  await expect(part('Two watchers')).toContainText(/% the same, of \d+ shared looks, kappa/);
  await expect(part('Quality beside volume').getByRole('img')).toHaveAccessibleName(/16 practices/);
  const coach = new Coach(page);
  await coach.visit('player/player-4');
  await expect(page.getByText(/^\d+ of \d+ times back in place in time$/)).toBeVisible();
  await expect(page.getByText(/^\d+ of \d+ times yes: Racket up\?$/)).toBeVisible();
  await expect(page.getByText('slipping')).toBeHidden();
});

test('effort and minutes are entered for all in one go, put right one by one, and give the load', async ({
  page,
}) => {
  await page.clock.install({ time: NOON });
  const coach = new Coach(page);
  await openLookedAt(page, 'effort');
  await page.getByLabel('Minutes for everyone').fill('80');
  await page.getByLabel('Minutes for everyone').blur();
  await expect(page.getByLabel('Minutes of Taro')).toHaveValue('80');
  await page.getByLabel('Effort of Taro').selectOption('7');
  await page.getByLabel('Minutes of Taro').fill('60');
  await page.getByLabel('Minutes of Taro').blur();
  await expect(page.getByLabel('Minutes of Pip')).toHaveValue('80');
  await coach.kept({ kind: 'effort-told', minutes: 60 });
  await page.reload();
  await expect(page.getByLabel('Effort of Taro')).toHaveValue('7');
  await expect(page.getByLabel('Minutes of Taro')).toHaveValue('60');
  await coach.visit('quality/player-5');
  // The week of today: effort 7 for 60 minutes, and nothing before it in that week.
  await expect(page.getByText(/^load 420; no monotony/)).toBeVisible();
  await coach.visit('quality/player-0');
  await expect(page.getByText(/^not known: 1 practice has no effort/)).toBeVisible();
});

test('a player who is handed the phone says how hard it was by one touch', async ({ page }) => {
  await page.clock.install({ time: NOON });
  await openLookedAt(page, 'player/player-4');
  const coach = new Coach(page);
  await coach.button('Hand the phone to Maximilienne').tap();
  const ask = page.getByRole('group', { name: 'How hard was this practice?' });
  // What is worked out meanwhile stands above it.
  await expect(page.locator('.own-balls')).toContainText('about');
  await ask.getByRole('button', { name: '6', exact: true }).tap();
  await expect(ask.getByRole('button', { name: '6', exact: true })).toHaveAttribute(
    'aria-pressed',
    'true',
  );
  await coach.kept({ kind: 'effort-told', player: 'player-4', effort: 6 });
  await page.reload();
  await expect(ask.getByRole('button', { name: '6', exact: true })).toHaveAttribute(
    'aria-pressed',
    'true',
  );
});

test('a focus of the coach’s own can be written, chosen and taken out', async ({ page }) => {
  const coach = new Coach(page);
  await coach.reachCourt(['Pip', 'Juno'], ['Mini rally']);
  await coach.visit('block');
  await page.getByText('Foci of your own').tap();
  await coach.button('Keep this focus').tap();
  await expect(page.getByText('Write a question of 1 to 40 letters.')).toBeVisible();
  await page.getByLabel(/^A question for yes or no/).fill('Ball hit in front?');
  await page.getByLabel(/^What yes looks like/).fill('Contact ahead of the front foot.');
  await coach.button('Keep this focus').tap();
  await page.getByLabel('Focus of the block').selectOption('Ball hit in front?');
  await coach.visit('court');
  await expect(page.getByText('Ball hit in front?')).toBeVisible();
  await expect(page.getByText('Contact ahead of the front foot.')).toBeVisible();
  await coach.visit('block');
  await page.getByText('Foci of your own').tap();
  await coach.button('Take out Ball hit in front?').tap();
  await page.getByLabel('Focus of the block').selectOption('none');
  await expect(
    page.getByLabel('Focus of the block').getByRole('option', { name: 'Ball hit in front?' }),
  ).toHaveCount(0);
});
