import { desk as deskEs } from '../../app/words/desk.es.ts';
import { desk as deskFr } from '../../app/words/desk.fr.ts';
import { es as wordsEs } from '../../app/words/es.ts';
import { fr as wordsFr } from '../../app/words/fr.ts';
import { planning as planningEs } from '../../app/words/planning.es.ts';
import { planning as planningFr } from '../../app/words/planning.fr.ts';
import { Coach } from './coach.ts';
import { expect, type Page, test } from './test.ts';
import { tooWide } from './too-wide.ts';

const es = { ...wordsEs, ...deskEs, block: planningEs.block };
const fr = { ...wordsFr, ...deskFr, block: planningFr.block };

/*
 * The coach's own language: the phone's, or the one that is chosen. And no language has words that a
 * small phone has no room for.
 */

const PLAYERS = ['Pip', 'Juno', 'Odile', 'Bram', 'Suki', 'Maximilienne', 'Taro', 'Wren'];

async function fits(page: Page, where: string): Promise<void> {
  expect.soft(await tooWide(page), where).toEqual([]);
}

/** From an empty app to the court, looking at every screen on the way. */
async function reachCourt(
  coach: Coach,
  t: typeof fr,
  look: (where: string) => Promise<void>,
): Promise<void> {
  const { page } = coach;
  await coach.visit('squad');
  await page.getByLabel(t.squad.pasted).fill(PLAYERS.join('\n'));
  await coach.button(t.squad.takePasted).tap();
  await coach.visit('');
  await coach.button(t.today.allHere).tap();
  await look('today');
  await coach.visit('block');
  for (const id of ['mini-rally', 'third-ball-down-the-line'] as const) {
    await coach.button(t.block.add(t.drills[id].name)).tap();
  }
  await look('block');
  await coach.button(t.done).tap();
  await coach.button(t.today.toCourt).tap();
  await coach.button(t.court.start).waitFor();
  await look('card');
}

for (const { locale, t } of [
  { locale: 'fr-FR', t: fr },
  { locale: 'es-MX', t: es },
]) {
  test.describe(locale, () => {
    test.use({ locale, viewport: { width: 360, height: 640 } });

    test('nothing is cut and nothing scrolls sideways on a small phone', async ({ page }) => {
      await page.clock.install({ time: new Date('2026-11-25T16:30:00') });
      const coach = new Coach(page);
      const look = (where: string) => fits(page, where);
      await reachCourt(coach, t, look);
      await coach.button(t.court.start).tap();
      await page.getByRole('timer').waitFor();
      await coach.mark('Pip');
      await coach.saved();
      await look('court');
      await page.clock.fastForward(130_000);
      await coach.button(t.court.settle).tap();
      await look('settle');
      await coach.visit('players');
      await look('players');
      await page.getByRole('link', { name: 'Pip' }).tap();
      await page.getByRole('heading', { level: 1, name: 'Pip' }).waitFor();
      await look('player');
      for (const address of [
        'week',
        'settings',
        'review',
        'numbers',
        'glance',
        'sizes',
        'coverage',
        'propose',
        'help',
      ]) {
        await coach.visit(address);
        await look(address);
      }
    });
  });
}

test.describe('a phone in French', () => {
  test.use({ locale: 'fr-CA' });

  test('opens the app in French and plays a round in it, with French dates', async ({ page }) => {
    await page.clock.install({ time: new Date('2026-11-25T16:30:00') });
    const coach = new Coach(page);
    await coach.open();
    await expect(page.locator('html')).toHaveAttribute('lang', 'fr');
    await expect(page.locator('html')).toHaveAttribute('dir', 'ltr');
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Aujourd’hui');
    await reachCourt(coach, fr, async () => {});
    await coach.button('Lancer').tap();
    await page.getByRole('timer').waitFor();
    await coach.mark('Pip');
    await expect(coach.tile('Pip')).toHaveAccessibleName(/\b1 série\b/);
    await page.clock.fastForward(130_000);
    await coach.button('Vérifier le décompte').tap();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Vérifier le décompte');
    await coach.visit('');
    await expect(page.getByText('mercredi 25 novembre').first()).toBeVisible();
    await coach.visit('week');
    await expect(page.getByText(/23[–-]29 novembre 2026/)).toBeVisible();
  });

  test('takes another language at once, and keeps it over a reload', async ({ page }) => {
    const coach = new Coach(page);
    await coach.visit('settings');
    await page.getByLabel('Español').tap();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Ajustes');
    await expect(page.locator('html')).toHaveAttribute('lang', 'es');
    await page.reload();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Ajustes');
    await page.getByLabel('English').tap();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Settings');
    await page.getByLabel('as the phone has it').first().tap();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Réglages');
  });
});

test.describe('a phone in a language that the app does not speak', () => {
  test.use({ locale: 'de-DE' });

  test('opens the app in English', async ({ page }) => {
    await new Coach(page).open();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Today');
  });
});

test.describe('a language that cannot be loaded', () => {
  test.use({ locale: 'fr-FR' });

  test('leaves the app in English', async ({ page }) => {
    await page.route(/\/assets\/fr-/, (route) => route.abort());
    await new Coach(page).open();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Today');
  });
});
