import { starterDrills } from '../../core/drill/starter-drills.ts';
import { Coach } from './coach.ts';
import { openPlanted } from './planted-round.ts';
import { expect, type Page, test } from './test.ts';

/* A drill's card: an assistant who never saw the drill runs it from here. */

const PAIRS = [
  ['Pip', 'Juno'],
  ['Moss', 'Tariku'],
];

/** The card of a round that waits for its start, with all that is loaded once the screen stands. */
async function openCard(page: Page, drill: string): Promise<void> {
  await page.clock.install();
  await openPlanted(page, { pairs: PAIRS, drill, started: false });
  await page.locator('.story').waitFor();
}

/** The facts of the card in their order, each with what stands under it. */
const facts = (page: Page) =>
  page
    .locator('dl.before-facts > *')
    .evaluateAll((all) => all.map((each) => `${each.tagName} ${each.textContent}`));

test('the card says the intention first, then the cue, then how the drill is run', async ({
  page,
}) => {
  await openCard(page, 'third-ball-down-the-line');
  const told = await facts(page);
  expect(told.filter((each) => each.startsWith('DT'))).toEqual([
    ...['DT Tactical intention', 'DT Cue', 'DT A set'],
    ...['DT Roles', 'DT Feed', 'DT What counts', 'DT Markers'],
  ]);
  for (const said of [
    'DD 1: hits ball one cross-court and ball three down the line',
    'DD 2: hits only cross-court',
    'DD A set is all four balls in the singles court: ball three aims at the target and need not meet it.',
  ]) {
    expect(told).toContain(said);
  }
  expect(told.join(' ')).toMatch(/1 drops a ball .* after a miss/);
});

test('what both roles do alike is said once', async ({ page }) => {
  await openCard(page, 'half-court-rally');
  const told = await facts(page);
  const at = told.indexOf('DT Roles');
  expect(told.slice(at + 1, at + 3)).toEqual([
    'DD Both: at the baseline, only straight, inside your own half',
    'DT Feed',
  ]);
});

test('the ball is followed shot by shot, by touch and by arrow keys, with each shot in words', async ({
  page,
}) => {
  await openCard(page, 'serve-return-next');
  const card = page.locator('.stepped-court');
  const drawn = card.locator('svg > .court-flight');
  const faint = card.locator('svg > .court-flight.court-past');
  const said = card.getByRole('status');
  await expect(drawn).toHaveCount(3);
  await expect(said).toHaveText('');
  await card.getByRole('button', { name: 'Show it ball by ball' }).tap();
  await expect(said).toHaveText(
    '1: serve by 1, from the baseline right of the centre to the left service box.',
  );
  await expect(drawn).toHaveCount(1);
  await expect(faint).toHaveCount(0);
  await card.getByRole('button', { name: 'Next: 2' }).tap();
  await expect(said).toHaveText(/^2: return by 2/);
  await expect(drawn).toHaveCount(2);
  await expect(faint).toHaveCount(1);
  for (const button of await card.getByRole('button').all()) {
    const { width, height } = (await button.boundingBox())!;
    expect(Math.min(width, height)).toBeGreaterThanOrEqual(44);
  }
  await card.getByRole('button', { name: 'Next: 3' }).press('ArrowRight');
  await expect(said).toHaveText(/^3: groundstroke by 1/);
  await card.getByRole('button', { name: 'All at once' }).press('ArrowLeft');
  await expect(said).toHaveText(/^2: return by 2/);
  // The space bar works the button that was gone to, and starts no clock.
  await card.getByRole('button', { name: 'Next: 3' }).press('Space');
  await card.getByRole('button', { name: 'All at once' }).press('Enter');
  await expect(said).toHaveText('');
  await expect(drawn).toHaveCount(3);
  await expect(page.getByRole('button', { name: /^Start/ })).toBeVisible();
});

test('a rally’s story says that it goes on from the first ball', async ({ page }) => {
  await new Coach(page).visit('drill/cross-court-deuce');
  const card = page.locator('.stepped-court');
  await card.getByRole('button', { name: 'Show it ball by ball' }).tap();
  await card.getByRole('button', { name: 'Next: 2' }).tap();
  await expect(card.getByRole('status')).toHaveText(/^2: .* Then from 1 again\.$/);
});

test('the numbers of shots as they are painted lie on no flight, mark or other number', async ({
  page,
}) => {
  const coach = new Coach(page);
  for (const { id } of starterDrills.filter(({ rule }) => rule === 'sequence')) {
    await coach.visit(`drill/${id}`);
    await page.locator('.story').waitFor();
    const touching = await page.locator('.court-drawing').evaluate((svg: SVGSVGElement) => {
      // Of a letter's box, which is as high as its line, the part from a digit's foot to its head.
      const boxOf = (text: SVGTextElement) => {
        const { x, y, width, height } = text.getBBox();
        return { x, y: y + 0.22 * height, width, height: 0.56 * height };
      };
      const isIn = (box: ReturnType<typeof boxOf>, x: number, y: number) =>
        x > box.x && x < box.x + box.width && y > box.y && y < box.y + box.height;
      const numbers = [...svg.querySelectorAll<SVGTextElement>('.court-order')];
      const shapes = [
        ...svg.querySelectorAll<SVGGeometryElement>(
          '.court-flight, .court-start, .court-recover, .court-marker',
        ),
      ];
      return numbers.flatMap((number, at) => {
        const box = boxOf(number);
        const hits = shapes.filter((shape) => {
          const length = shape.getTotalLength();
          return Array.from({ length: 401 }, (_, n) => (n / 400) * length).some((along) => {
            const { x, y } = shape.getPointAtLength(along);
            return isIn(box, x, y);
          });
        });
        const others = numbers.filter((other, place) => {
          const its = boxOf(other);
          return (
            place !== at &&
            box.x < its.x + its.width &&
            its.x < box.x + box.width &&
            box.y < its.y + its.height &&
            its.y < box.y + box.height
          );
        });
        return [...hits.map((shape) => shape.getAttribute('class')), ...others.map(() => 'number')];
      });
    });
    expect(touching, id).toEqual([]);
  }
});

test('an own drill says on its card what the coach wrote of how it is run', async ({ page }) => {
  const coach = new Coach(page);
  await coach.visit('drill');
  await page.getByLabel('Name', { exact: true }).fill('Two short, one deep');
  await page.getByLabel('What 1 does').fill('plays short twice');
  await page
    .getByLabel('Who feeds, and how it begins again after a miss')
    .fill('1 feeds from the hand.');
  await coach.button('Save').tap();
  await page.getByRole('link', { name: 'Two short, one deep' }).tap();
  const card = page.locator('.drill-facts');
  await expect(card).toContainText('1: plays short twice');
  await expect(card).toContainText('1 feeds from the hand.');
  await expect(card.getByText('What counts')).toHaveCount(0);
  await coach.button('Change').tap();
  await expect(page.getByLabel('What 1 does')).toHaveValue('plays short twice');
});

test('where the part that says how a drill is run cannot be loaded, the card says so and the round starts', async ({
  page,
}) => {
  await page.route(/drill-run|ball-story/, (route) => route.abort());
  await page.clock.install();
  await openPlanted(page, { pairs: PAIRS, drill: 'mini-rally', started: false });
  await expect(page.locator('.before-facts').last()).toContainText('could not be loaded');
  await new Coach(page).start();
});
