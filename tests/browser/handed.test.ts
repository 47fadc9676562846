import { Coach } from './coach.ts';
import { NOON, openPlanted } from './planted-round.ts';
import { openPractised, playerId } from './played-practice.ts';
import { expect, type Page, test } from './test.ts';

/* A phone in a child's hand, and how the coach takes it back. */

const LONG_ENOUGH = 2_100;
const PAIRS = [
  ['Pip', 'Juno'],
  ['Odile', 'Bram'],
];

const forCoach = (page: Page) => page.getByRole('button', { name: 'For the coach' });

/** Where on it a finger holds: over what takes a mark back on the court below. */
async function placeOn(page: Page): Promise<{ x: number; y: number }> {
  const box = await forCoach(page).boundingBox();
  if (!box) throw new Error('nothing to hold');
  return { x: box.x + box.width - 20, y: box.y + box.height / 2 };
}

/** A held finger, mouse or key, until the clock has run; then what the lift sets off. */
type Way = (page: Page) => Promise<() => Promise<void>>;

/** What some browsers send at the lift, or long after it, to whatever lies there by then. */
const ghost = (page: Page, { x, y }: { x: number; y: number }) =>
  page.evaluate(
    ({ x, y }) => {
      const below = document.elementFromPoint(x, y);
      const at = { bubbles: true, cancelable: true, clientX: x, clientY: y, detail: 1 };
      below?.dispatchEvent(new PointerEvent('pointerup', { ...at, pointerId: 7 }));
      below?.dispatchEvent(new MouseEvent('mouseup', at));
      below?.dispatchEvent(new MouseEvent('click', at));
    },
    { x, y },
  );

const ways: Record<string, Way> = {
  finger: async (page) => {
    const session = await page.context().newCDPSession(page);
    const at = await placeOn(page);
    await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [at] });
    return async () => {
      await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
      await ghost(page, at);
    };
  },
  mouse: async (page) => {
    const at = await placeOn(page);
    await page.mouse.move(at.x, at.y);
    await page.mouse.down();
    return async () => {
      await page.mouse.up();
      await ghost(page, at);
    };
  },
  key: async (page) => {
    await forCoach(page).focus();
    await page.keyboard.down('Enter');
    return async () => {
      // The key is still down, and the phone has put the focus on another control.
      await page.evaluate(() =>
        document.querySelector<HTMLElement>('.page button, .tile-back:not(:disabled)')?.focus(),
      );
      await page.keyboard.down('Enter');
      await page.keyboard.up('Enter');
    };
  },
};

/** Holds the coach's control until it acts; the fill must be seen before time runs. */
async function holdBy(page: Page, way: Way): Promise<() => Promise<void>> {
  const lift = await way(page);
  await page.locator('.hold-fill').waitFor({ state: 'attached' });
  await page.clock.runFor(LONG_ENOUGH);
  return lift;
}

test.beforeEach(async ({ page }) => {
  await page.clock.install({ time: NOON });
});

for (const [name, way] of Object.entries(ways)) {
  test(`the lift of the ${name} that took the phone back from a child acts on nothing below`, async ({
    page,
  }) => {
    const coach = new Coach(page);
    const address = `player/${playerId(0)}`;
    await openPractised(
      page,
      { names: PAIRS.flat(), drills: ['mini-rally'], daysBefore: [1] },
      address,
    );
    await coach.button('Hand the phone to Pip').tap();
    const lift = await holdBy(page, way);
    await page.getByRole('navigation').waitFor();
    await lift();
    await page.clock.runFor(1_000);
    expect(new URL(page.url()).hash).toBe(`#/${address}`);
    await page.getByRole('link', { name: 'Week' }).tap();
    await expect(page).toHaveURL(/#\/week$/);
  });

  test(`the lift of the ${name} that left a pair’s own screen acts on no tile below`, async ({
    page,
  }) => {
    const coach = new Coach(page);
    await openPlanted(page, { pairs: PAIRS }, 'pair/B');
    await coach.mark('Odile');
    const lift = await holdBy(page, way);
    await expect(page.locator('.tile')).toHaveCount(2);
    await lift();
    await page.clock.runFor(1_000);
    await expect(coach.tile('Odile')).toHaveAccessibleName(/\b1 set\b/);
    await coach.takeBack('Odile');
    await expect(coach.tile('Odile')).toHaveAccessibleName(/\b0 sets\b/);
  });
}

test('a hold that begins as the page comes is not taken away by what comes later', async ({
  page,
}) => {
  const coach = new Coach(page);
  await openPractised(
    page,
    { names: PAIRS.flat(), drills: ['mini-rally'], daysBefore: [1] },
    `player/${playerId(0)}`,
  );
  const moved = page.evaluate(
    () =>
      new Promise<string>((resolve) => {
        // In the same moment in which the control is there it is held; two frames later it still is.
        new MutationObserver((_, observer) => {
          const hold = document.querySelector<HTMLElement>('.hold');
          if (!hold) return;
          observer.disconnect();
          hold.focus();
          requestAnimationFrame(() =>
            requestAnimationFrame(() =>
              setTimeout(() => resolve(document.activeElement?.textContent ?? ''), 100),
            ),
          );
        }).observe(document.body, { childList: true, subtree: true });
      }),
  );
  await coach.button('Hand the phone to Pip').tap();
  await page.clock.runFor(1_000);
  expect(await moved).toBe('For the coach');
});

test('the way back from a child’s page is in sight however far it is scrolled, and its recipe is told to the coach only', async ({
  page,
}) => {
  const coach = new Coach(page);
  await openPractised(
    page,
    {
      names: ['Wilhelmina-Alexandrina-Oranienburgerin', 'Juno', 'Odile', 'Bram'],
      drills: ['mini-rally', 'lob-and-overhead', 'volley-to-volley', 'wide-past-the-markers'],
      daysBefore: [8, 6, 4, 1],
    },
    `player/${playerId(0)}`,
  );
  const RECIPE = /two seconds/;
  await expect(page.getByText(RECIPE)).toBeVisible();
  await coach.button(/^Hand the phone/).tap();
  await expect(forCoach(page)).toBeVisible();
  for (const width of [320, 360, 390]) {
    await page.setViewportSize({ width, height: 568 });
    for (const text of ['100%', '200%']) {
      const outside = await page.evaluate((text) => {
        document.documentElement.style.fontSize = text;
        const hold = document.querySelector('.hold');
        const end = document.documentElement.scrollHeight;
        return [0, end / 2, end].filter((to) => {
          scrollTo(0, to);
          const { top, bottom, left, right } = hold?.getBoundingClientRect() ?? new DOMRect();
          return !(top >= 0 && bottom <= innerHeight && left >= 0 && right <= innerWidth);
        });
      }, text);
      expect.soft(outside, `${width} px, ${text}`).toEqual([]);
      // At its end the page is read down to its last line.
      const hidden = await page.evaluate(() => {
        scrollTo(0, document.documentElement.scrollHeight);
        const last = document.querySelector('main')?.lastElementChild?.getBoundingClientRect();
        const foot = document.querySelector('.player-coach')?.getBoundingClientRect();
        return (last?.bottom ?? 0) - (foot?.top ?? 0);
      });
      expect.soft(hidden, `${width} px, ${text}`).toBeLessThanOrEqual(0);
    }
  }
  await expect(page.getByText(RECIPE)).toHaveCount(0);
  await forCoach(page).tap(); // A child tries it, and learns nothing.
  await expect(page.getByText(RECIPE)).toHaveCount(0);
  await expect(page.getByRole('navigation')).toHaveCount(0);
});

test('a pair’s own screen tells no recipe; the card did, before it was handed over', async ({
  page,
}) => {
  await openPlanted(page, { pairs: PAIRS, started: false });
  await page.getByText('Other screens').tap();
  await expect(page.getByText(/two seconds/)).toBeVisible();
  await page.getByRole('link', { name: /^B: the own screen/ }).tap();
  await expect(forCoach(page)).toBeVisible();
  await expect(page.getByText(/two seconds/)).toHaveCount(0);
});
