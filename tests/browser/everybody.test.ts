import { expectNothing } from './axe.ts';
import { Coach } from './coach.ts';
import { EACH_LANGUAGE } from './each-language.ts';
import { expect, test } from './test.ts';

/*
 * For everybody: WCAG 2.2 AA as axe-core checks it (and its rules for target size and enhanced
 * contrast), in both themes: on an empty app and on the court; on every screen of a
 * full ledger in everybody-season.test.ts. And a round by keyboard alone.
 */

const PLAYERS = ['Pip', 'Juno', 'Odile', 'Bram', 'Suki'];

for (const { locale, theme, t, planning } of EACH_LANGUAGE) {
  test.describe(`axe finds nothing, ${locale}, ${theme}`, () => {
    // No colour is looked at while it changes.
    test.use({ locale, colorScheme: theme, contextOptions: { reducedMotion: 'reduce' } });

    test('on any screen of an empty app', async ({ page }) => {
      const coach = new Coach(page);
      await coach.open();
      await expectNothing(page, 'an empty app');
      for (const address of [
        ...['squad', 'block', 'players', 'week', 'review', 'coverage', 'handover/club'],
      ]) {
        await coach.visit(address);
        await expectNothing(page, `${address} of an empty app`);
      }
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
