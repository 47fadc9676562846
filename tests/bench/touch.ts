import type { CDPSession, Page } from 'playwright/test';
import { randomFrom } from '../../demo-data/random.ts';

/** Between two touches, in milliseconds: longer than anything that one of them sets off. */
const GAP = { least: 300, most: 400 } as const;

/**
 * Lets a page note, for every touch, the milliseconds from the moment that the browser gives it to
 * the end of the next frame: the task behind the frame in which it can be seen first.
 */
export const noteFrames = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const frames: number[] = [];
    Object.assign(window, { framesNoted: frames });
    addEventListener(
      'pointerdown',
      ({ timeStamp }) => window.behindFrame(() => frames.push(performance.now() - timeStamp)),
      { capture: true },
    );
  });

/** What was noted since it was asked last. */
export const framesOf = (page: Page): Promise<number[]> =>
  page.evaluate(() => (Reflect.get(window, 'framesNoted') as number[]).splice(0));

/** Touches what the selector names, one after the other by lot, at moments that no frame knows. */
export async function touch(
  page: Page,
  session: CDPSession,
  selector: string,
  times: number,
  seed: number,
): Promise<void> {
  const random = randomFrom(seed);
  const boxes = await Promise.all(
    (await page.locator(selector).all()).map((each) => each.boundingBox()),
  );
  for (let time = 0; time < times; time++) {
    const box = boxes[random.below(boxes.length)];
    if (!box) throw new Error(`nothing to touch: ${selector}`);
    const at = { x: box.x + box.width / 3, y: box.y + box.height / 2 };
    await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [at] });
    await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    await page.waitForTimeout(GAP.least + random.unit() * (GAP.most - GAP.least));
  }
}
