import { Coach } from './coach.ts';
import { DEMO_SEASON } from './demo-season.ts';
import { expect, type Locator, type Page, test } from './test.ts';

/*
 * A coach's five questions in the evening, each answered by a picture and a sentence on the first
 * screen, with at most one touch and no scroll; for the demo season on a phone of 390 × 844.
 */

test.use({ viewport: { width: 390, height: 844 }, storageState: DEMO_SEASON });

/** A coach whose touches and scrolls are counted. */
class Evening extends Coach {
  touches = 0;

  async touch(target: Locator): Promise<void> {
    this.touches += 1;
    await target.tap();
  }

  /** Everything of it lies on the screen above the bar, without a scroll. */
  async expectInSight(target: Locator, what: string): Promise<void> {
    await expect(target, what).toBeVisible();
    const [box, bar] = [await target.boundingBox(), await this.page.locator('.bar').boundingBox()];
    expect(box!.y, what).toBeGreaterThanOrEqual(0);
    expect(box!.y + box!.height, what).toBeLessThanOrEqual(bar!.y);
    expect(await this.page.evaluate(() => scrollY), what).toBe(0);
  }
}

/** The evening page of the demo. */
async function openEvening(page: Page): Promise<Evening> {
  const coach = new Evening(page);
  await coach.visit('review');
  await expect(page.locator('.finding').first()).toBeVisible();
  await expect(page.getByText('still being worked out')).toHaveCount(0);
  return coach;
}

const finding = (page: Page, words: RegExp) => page.locator('.finding').filter({ hasText: words });

test('the five questions are answered without a scroll and with at most one touch', async ({
  page,
}) => {
  const coach = await openEvening(page);

  const answers: [question: string, words: RegExp][] = [
    ['what did we leave out?', /have gone without for more than 8 days/],
    ['is it too hard or too easy?', /is too (hard|easy) at \d+: a pair makes about [\d.]+ sets/],
    ['who should play with whom?', /have (not|never) played together/],
    ['who needs what?', /lags most behind the player’s own other kinds/],
    ['are we getting better?', /The squad .*\d+% of the balls/],
  ];
  await expect(page.locator('.finding')).toHaveCount(answers.length);
  for (const [question, words] of answers) {
    const answer = finding(page, words);
    await coach.expectInSight(answer, question);
    const picture = answer.getByRole('img');
    await coach.expectInSight(picture, `the picture of: ${question}`);
    // The picture says in words what a person sees.
    expect(await picture.getAttribute('aria-label'), question).toMatch(/^.{20,}\.$/);
  }
  expect(coach.touches).toBe(0);

  // All of the squad is one touch away, and on one screen.
  await coach.touch(coach.button('At a glance'));
  expect(coach.touches).toBe(1);
  const rows = page.locator('.glance-table tbody tr');
  await expect(rows).toHaveCount(11);
  await coach.expectInSight(rows.last(), 'the last player of the glance');
  await expect(rows.first().getByRole('link').nth(2)).toHaveAccessibleName(
    /^\S+, Groundstrokes: \d+% come back \(\d+% to \d+%\), (rising|steady|falling|not clear yet|too few yet)$/,
  );
  await rows.first().getByRole('link').nth(2).tap();
  await coach.expectInSight(page.getByRole('img'), 'a player’s line');
  await expect(page.getByRole('img')).toHaveAccessibleName(
    /over 12 weeks.* \d+ dots, one a practice/,
  );
});

test('every finding leads to what it rests on, and is done by one touch that can be taken back', async ({
  page,
}) => {
  const coach = await openEvening(page);

  for (const [words, heading] of [
    [/have gone without/, 'Left out by whom'],
    [/is too/, 'Too hard, too easy'],
    [/played together/, 'Who next with whom'],
    [/The squad/, 'At a glance'],
  ] as const) {
    await finding(page, words).getByRole('link').tap();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(heading);
    await page.goBack();
    await expect(page.locator('.finding').first()).toBeVisible();
  }

  const putIn = finding(page, /have gone without/).getByRole('button');
  await putIn.tap();
  await expect(putIn).toHaveText(/^In the next block: /);
  const drill = (await putIn.textContent())?.replace('In the next block: ', '') ?? '';
  const pair = finding(page, /played together/).getByRole('button');
  await pair.tap();
  await expect(pair).toHaveText('A pair next time');
  const size = finding(page, /is too/).getByRole('button');
  const said = /Size (\d+) instead of (\d+)/.exec((await size.textContent()) ?? '');
  await size.tap();
  await expect(size).toHaveText(`From now on ${said?.[1]}`);
  await size.tap();
  await expect(size).toHaveText(`Size ${said?.[1]} instead of ${said?.[2]}`);

  // The next practice knows of it: the drill goes in by a touch, and is in what is proposed.
  await coach.visit('');
  await expect(coach.button(`Asked for: put in ${drill}`)).toBeVisible();
  await coach.visit('propose');
  await expect(page.locator('.propose-steps')).toContainText(drill);
  await coach.visit('');
  await coach.button('Everyone is here').tap();
  await coach.button(`Asked for: put in ${drill}`).tap();
  await expect(coach.button(`Asked for: put in ${drill}`)).toHaveCount(0);
  const names = (await page.getByText(/^Asked for as pairs: /).textContent()) ?? '';
  const [a = '', b = ''] = names.replace('Asked for as pairs: ', '').replace('.', '').split(' · ');
  const pairs = page.getByRole('region', { name: 'Pairs' }).locator('li');
  await expect(pairs.filter({ hasText: a }).filter({ hasText: b })).toHaveCount(1);
});

test('a week of the demo is on one screen, with who was away by name', async ({ page }) => {
  const coach = new Evening(page);
  await coach.visit('week');
  // The season ended yesterday, in the midst of its last week.
  await page.getByRole('link', { name: 'The week before' }).tap();
  const days = page.locator('.at-once-days li');
  await expect(days).toHaveCount(3);
  const rows = page.locator('.at-once-row');
  await expect(rows).toHaveCount(4 + 11);
  await coach.expectInSight(rows.last(), 'the last player of the week');
  await expect(days.filter({ hasText: /\d+ there\. Away: \w+/ }).first()).toBeVisible();
  await expect(rows.last()).toContainText(/\d+ balls, usually \d+/);
});
