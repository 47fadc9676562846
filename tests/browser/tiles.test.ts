import { NOON, openPlanted } from './planted-round.ts';
import { expect, type Locator, type Page, test } from './test.ts';

/*
 * The running screen as hands and eyes have it: nothing lies on anything else, nothing leaves the
 * screen, and a finger finds its tile, at every size, with the longest names and twice the text.
 */

const SIZES = [
  { width: 320, height: 568 },
  { width: 360, height: 640 },
  { width: 390, height: 844 },
  { width: 412, height: 915 },
  { width: 1024, height: 768 },
  { width: 768, height: 1024 },
];

const SPLIT = 'wide-past-the-markers';

/** Forty letters each, told apart at their beginning. */
const name = (index: number) =>
  `${String.fromCharCode(65 + index)}lexandrina-Wilhelmina of Saint Petersburg`.slice(0, 40);

/** So many pairs; the last is a trio. */
const longPairs = (pairs: number): string[][] =>
  Array.from({ length: pairs }, (_, pair) =>
    [0, 1, ...(pair === pairs - 1 ? [2] : [])].map((place) => name(3 * pair + place)),
  );

/** A count is read at arm's length, as the head of a page is: our own choice, no source. */
const SMALLEST_COUNT = 22;

/** Everything that is wrong with the screen as it stands, in words. */
const faults = (page: Page): Promise<string[]> =>
  page.evaluate((SMALLEST_COUNT) => {
    const found: string[] = [];
    const box = (element: Element) => element.getBoundingClientRect();
    const called = (element: Element) =>
      `${element.className || element.tagName} "${element.textContent?.slice(0, 12)}"`;
    const all = (selector: string, within: ParentNode = document) => [
      ...within.querySelectorAll<HTMLElement>(selector),
    ];
    const overlap = (one: DOMRect, other: DOMRect) =>
      Math.min(one.right, other.right) - Math.max(one.left, other.left) > 0.5 &&
      Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) > 0.5;
    const apart = (elements: Element[]) => {
      for (const [index, one] of elements.entries()) {
        for (const other of elements.slice(index + 1)) {
          if (overlap(box(one), box(other))) {
            found.push(`${called(one)} lies on ${called(other)}`);
          }
        }
      }
    };
    const inside = (element: Element, outer: DOMRect) => {
      const { left, right, top, bottom } = box(element);
      const out =
        left < outer.left - 0.5 ||
        right > outer.right + 0.5 ||
        top < outer.top - 0.5 ||
        bottom > outer.bottom + 0.5;
      if (out) found.push(`${called(element)} leaves its place`);
    };
    const whole = (element: HTMLElement) => {
      if (element.scrollWidth > element.clientWidth + 1) found.push(`${called(element)} is cut`);
    };

    const screen = new DOMRect(0, 0, innerWidth, innerHeight);
    const tiles = all('.tile');
    const head = all('.running-clock, .running-state p, .running-head .button');
    apart([...head, ...tiles]);
    for (const element of [...head, ...tiles]) inside(element, screen);
    for (const element of head) whole(element);
    if (document.documentElement.scrollWidth > innerWidth) found.push('the page scrolls sideways');

    for (const tile of tiles) {
      const { height } = box(tile);
      if (height < (innerWidth < 360 ? 85 : 96)) found.push(`${called(tile)} is ${height} px high`);
      const back = all('.tile-back', tile);
      const parts = all('.letter, .tile-name > span, .tile-sets, .tile-state > span', tile).filter(
        // What a low tile has no room for is left out whole.
        (part) =>
          getComputedStyle(part).clipPath === 'none' &&
          overlap(box(part), box(part.parentElement as Element)),
      );
      apart([...parts, ...back]);
      for (const part of [...parts, ...back]) inside(part, box(tile));
      for (const part of all('.tile-room, .tile-back', tile)) whole(part);
      for (const count of all('.tile-sets', tile)) {
        const size = Number.parseFloat(getComputedStyle(count).fontSize);
        if (size < SMALLEST_COUNT) found.push(`${called(tile)} counts in ${size} px`);
      }
    }
    for (const [index, one] of tiles.entries()) {
      for (const other of tiles.slice(index + 1)) {
        const [a, b] = [box(one), box(other)];
        const across = Math.max(a.left, b.left) - Math.min(a.right, b.right);
        const down = Math.max(a.top, b.top) - Math.min(a.bottom, b.bottom);
        if (Math.max(across, down) < 7.5) found.push(`${called(one)} is close to ${called(other)}`);
      }
    }
    for (const count of all('.tile-count')) {
      const { left, right, bottom, top } = box(count);
      const nearest = Math.min(left, innerWidth - right, innerHeight - bottom, top);
      if (nearest < 24) found.push(`${called(count)} counts ${nearest} px from the edge`);
    }
    for (const control of all('.running button')) {
      const { width, height } = box(control);
      if (width < 44 || height < 44) found.push(`${called(control)} is ${width} by ${height} px`);
    }
    return [...new Set(found)];
  }, SMALLEST_COUNT);

/** Looks at the screen at every size, with the text as it is and twice as large. */
async function look(page: Page, what: string, sizes = SIZES): Promise<void> {
  for (const size of sizes) {
    await page.setViewportSize(size);
    for (const text of ['100%', '200%']) {
      await page.evaluate((text) => {
        document.documentElement.style.fontSize = text;
      }, text);
      const at = `${what}, ${size.width} × ${size.height}, text ${text}`;
      expect.soft(await faults(page), at).toEqual([]);
    }
  }
}

for (const pairs of [2, 3, 4, 6, 8]) {
  for (const drill of ['mini-rally', SPLIT]) {
    const split = drill === SPLIT;
    test(`${pairs} pairs ${split ? 'on split tiles ' : ''}have their room on every screen, counted, doubted and paused`, async ({
      page,
    }) => {
      await page.clock.install({ time: NOON });
      await openPlanted(page, { pairs: longPairs(pairs), drill });
      const counts = page.locator('.tile-count');
      await expect(counts).toHaveCount(split ? 2 * pairs + 1 : pairs);
      // The second of each is too soon to be true, and keys show once one was used.
      await counts.evaluateAll((tiles) => {
        for (const tile of tiles.flatMap((tile) => [tile, tile])) {
          tile.dispatchEvent(new PointerEvent('pointerdown', { bubbles: true }));
        }
      });
      await page.keyboard.press('1');
      await expect(page.locator('.tile-doubt')).toHaveCount(split ? 2 * pairs + 1 : pairs);
      // Seventeen split tiles are more than the smallest phone holds with targets of 44 px.
      await look(page, 'running', split && pairs > 6 ? SIZES.slice(1) : SIZES);
      await page.keyboard.press(' ');
      await expect(page.getByRole('status').filter({ hasText: 'Paused' })).toBeVisible();
      await look(page, 'paused', SIZES.slice(1, 2));
    });
  }
}

test('held in the left hand, everything that is worked by the thumb lies on the other side', async ({
  page,
}) => {
  await page.clock.install({ time: NOON });
  await page.addInitScript(() => localStorage.setItem('rally-ledger', '{"hand":"left"}'));
  await openPlanted(page, { pairs: longPairs(4) });
  const middle = async (locator: Locator) => {
    const { x = 0, width = 0 } = (await locator.boundingBox()) ?? {};
    return x + width / 2;
  };
  const tile = page.locator('.tile').first();
  expect(await middle(tile.locator('.tile-back'))).toBeLessThan(await middle(tile));
  expect(await middle(page.locator('.running-clock'))).toBeGreaterThan(180);
  const [stop, pause] = [
    page.getByRole('button', { name: 'Stop' }),
    page.getByRole('button', { name: 'Pause' }),
  ];
  expect(await middle(stop)).toBeLessThan(await middle(pause));
  await look(page, 'left-handed');
});

test('names of eight letters stand whole on the split tiles of eleven players', async ({
  page,
}) => {
  await page.clock.install({ time: NOON });
  const names = [
    ...['Leopolda', 'Ottoline', 'Florimel', 'Marigold', 'Philippa', 'Leonidas', 'Octavian'],
    ...['Florence', 'Marcello', 'Phillips', 'Bertrand'],
  ];
  const pairs = [0, 2, 4, 6, 8].map((at) => names.slice(at, at === 8 ? 11 : at + 2));
  await openPlanted(page, { pairs, drill: SPLIT });
  await expect(page.locator('.tile')).toHaveCount(11);
  for (const size of SIZES.filter(({ width }) => width >= 360)) {
    await page.setViewportSize(size);
    const cut = await page
      .locator('.pair-call, .pair-call > *')
      .evaluateAll((all) =>
        all
          .filter(
            ({ scrollWidth, clientWidth, scrollHeight, clientHeight }) =>
              scrollWidth > clientWidth + 1 || scrollHeight > clientHeight + 1,
          )
          .map((name) => name.textContent),
      );
    expect.soft(cut, `${size.width} × ${size.height}`).toEqual([]);
  }
});
