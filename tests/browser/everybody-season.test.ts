import { expectNothing } from './axe.ts';
import { Coach } from './coach.ts';
import { DEMO_SEASON } from './demo-season.ts';
import { EACH_LANGUAGE } from './each-language.ts';
import { expect, test } from './test.ts';

for (const { locale, theme, t, planning, look } of EACH_LANGUAGE) {
  test.describe(`axe finds nothing, ${locale}, ${theme}`, () => {
    test.use({
      ...{ locale, colorScheme: theme, storageState: DEMO_SEASON },
      // No colour is looked at while it changes.
      contextOptions: { reducedMotion: 'reduce' },
    });

    test('on any screen of a full ledger', async ({ page }) => {
      const coach = new Coach(page);
      await coach.visit('');
      await expect(page.getByRole('heading', { name: t.today.here })).toBeVisible();
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
        await page.getByRole('link', { name: 'Pip', exact: true }).tap();
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
  });
}
