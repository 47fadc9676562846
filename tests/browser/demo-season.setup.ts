import { Coach } from './coach.ts';
import { DEMO_SEASON } from './demo-season.ts';
import { expect, test } from './test.ts';

test('the invented season comes by one tap, and all touches of it are worked out while the phone is idle', async ({
  page,
}) => {
  test.setTimeout(900_000);
  const coach = new Coach(page);
  await coach.visit('settings');
  await coach.loadDemo();
  await coach.visit('numbers');
  await expect(page.getByRole('heading', { name: 'Level, with an average partner' })).toBeVisible();
  await expect(page.getByText('still being worked out')).toHaveCount(0, { timeout: 800_000 });
  await page.context().storageState({ path: DEMO_SEASON, indexedDB: true });
});
