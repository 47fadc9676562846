import { Coach } from './coach.ts';
import { expect, test } from './test.ts';

/* Whatever the address, there is a page, and a way on from it. */

for (const address of ['#/nothing-of-ours', '#nothing', '#/%E0%A4%A', '#/Court']) {
  test(`${address} says that nothing is there and leads to Today`, async ({ page }) => {
    const coach = new Coach(page);
    await page.goto(`./${address}`);
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Nothing is here');
    await coach.button('To Today').tap();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Today');
  });
}

test.describe('with the service worker', () => {
  test.use({ serviceWorkers: 'allow' });

  test('an address that does not exist is no blank page, with a network and without', async ({
    page,
    context,
  }) => {
    await page.goto('./');
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    for (const offline of [false, true]) {
      await context.setOffline(offline);
      for (const address of ['nothing', 'nothing/of/ours', 'court/?round=1']) {
        await page.goto(`./${address}`);
        await expect(page.getByRole('heading', { level: 1 }), address).toHaveText(
          'Nothing is here',
        );
        await new Coach(page).button('To Today').tap();
        await expect(page.getByRole('heading', { level: 1 }), address).toHaveText('Today');
      }
      await page.goto('./index.html?from=mail#/help');
      await expect(page.getByRole('heading', { level: 1 })).toHaveText('Help');
    }
  });
});

for (const [address, way] of [
  ['block', 'Done'],
  ['drill/lob-and-overhead', 'Back'],
] as const) {
  test(`the way back from ${address} is in reach wherever one has scrolled`, async ({ page }) => {
    const coach = new Coach(page);
    await page.setViewportSize({ width: 320, height: 568 });
    await coach.visit(address);
    const button = coach.button(way);
    await expect(button).toHaveCount(1);
    for (const share of [0, 0.5, 1]) {
      await page.evaluate((to) => scrollTo(0, to * document.documentElement.scrollHeight), share);
      await expect(button).toBeInViewport({ ratio: 1 });
    }
    // At the end nothing lies under it.
    const [last, foot] = await page.evaluate(() =>
      ['main > :nth-last-child(2)', '.foot'].map((of) => {
        const { top, bottom } = document.querySelector(of)!.getBoundingClientRect();
        return { top, bottom };
      }),
    );
    expect(last!.bottom).toBeLessThanOrEqual(foot!.top);
  });
}

test('a drill shows no heading with nothing under it, on its card and at the court', async ({
  page,
}) => {
  const coach = new Coach(page);
  await coach.pasteSquad('Pip\nJuno');
  await coach.visit('drill');
  await page.getByLabel('Name', { exact: true }).fill('Bare');
  await coach.button('Save').tap();
  await coach.button('Add Bare').tap();
  const headings = () =>
    page.evaluate(() =>
      [...document.querySelectorAll('dl')].flatMap((list) =>
        [...list.children].flatMap((each) => {
          const said = each.textContent?.trim() ?? '';
          const isHeading = each.tagName === 'DT';
          const next = each.nextElementSibling;
          if (isHeading && (next?.tagName !== 'DD' || next.textContent?.trim() === ''))
            return [said];
          return !isHeading && /(^|\d )[:·]|:$/.test(said) ? [said] : [];
        }),
      ),
    );
  await page.getByRole('link', { name: 'Bare' }).tap();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Bare');
  await expect(page.getByText('Cue')).toHaveCount(0);
  expect(await headings()).toEqual([]);
  await coach.visit('');
  await coach.button('Everyone is here').tap();
  await coach.button('Go to the court').tap();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Bare');
  for (const empty of ['Cue', 'Roles']) {
    await expect(page.locator('dt', { hasText: empty })).toHaveCount(0);
  }
  expect(await headings()).toEqual([]);
});

test('an own drill cannot carry the name of another', async ({ page }) => {
  const coach = new Coach(page);
  await coach.visit('drill');
  const name = page.getByLabel('Name', { exact: true });
  await name.fill('mini RALLY');
  await coach.button('Save').tap();
  await expect(page.getByText('Another drill has this name already')).toBeVisible();
  await expect(name).toBeFocused();
  await name.fill('Mini rally for two');
  await coach.button('Save').tap();
  await expect(coach.button('Add Mini rally for two')).toBeVisible();
  await coach.visit('drill');
  await name.fill('Mini rally for two');
  await coach.button('Save').tap();
  await expect(page.getByText('Another drill has this name already')).toBeVisible();
});
