import type { Page } from 'playwright/test';
import { type Bench, type MeasuredPage, slow } from './measured-phone.ts';
import { quantile } from './quantile.ts';
import type { Row } from './row.ts';
import { framesOf, noteFrames, touch } from './touch.ts';

/** Touches of each page, in turns, so that what else the machine does falls on both alike. */
const TURNS = 4;
const TOUCHES = 25;
const RATES = [1, 4, 6];
const TILES = '.tile-count';

/** Lets a page note the milliseconds from each touch to the end of the transaction that it began. */
const noteKept = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const kept: number[] = [];
    Object.assign(window, { kept });
    let touched = 0;
    addEventListener(
      'pointerdown',
      ({ timeStamp }) => {
        touched = timeStamp;
      },
      { capture: true },
    );
    const { transaction } = IDBDatabase.prototype;
    IDBDatabase.prototype.transaction = function (...given) {
      const begun = transaction.apply(this, given);
      begun.addEventListener('complete', () => {
        if (touched > 0 && begun.mode === 'readwrite') kept.push(performance.now() - touched);
        touched = 0;
      });
      return begun;
    };
  });

const keptOf = (page: Page): Promise<number[]> =>
  page.evaluate(() => (Reflect.get(window, 'kept') as number[]).splice(0));

/** Touches both in turns and gives what each noted. */
async function inTurns(
  one: MeasuredPage & { at: string },
  other: MeasuredPage & { at: string },
  noted: (page: Page) => Promise<number[]>,
): Promise<[one: number[], other: number[]]> {
  const found: [number[], number[]] = [[], []];
  for (let turn = 0; turn < TURNS; turn++) {
    for (const [place, { page, session, at }] of [one, other].entries()) {
      await touch(page, session, at, TOUCHES, 10 + turn);
      found[place]?.push(...(await noted(page)));
    }
  }
  return found;
}

/** From the touch of a tile to its frame and to the disk, beside a page with one button. */
export async function courtTouch(bench: Bench): Promise<Row[]> {
  const bare = { ...(await bench.open('bare/')), at: 'button' };
  const keeper = { ...(await bench.open('bare/keeper.html')), at: 'button' };
  const court = { ...(await bench.court()), at: TILES };
  const late = { ...(await bench.court({ rounds: 8, marks: 86 })), at: TILES };
  for (const { page } of [bare, court, late]) await noteFrames(page);
  for (const { page } of [keeper, court]) await noteKept(page);
  const rows: Row[] = [];
  for (const rate of RATES) {
    await slow(rate, bare, court);
    const [own, reference] = await inTurns(court, bare, framesOf);
    for (const [share, most, name] of [
      [0.5, 1.15, 'median'],
      [0.95, 1.3, 'p95'],
    ] as const) {
      rows.push({
        figure: `touch to frame, ${name}, CPU ×${rate}`,
        unit: 'ms',
        measured: quantile(own, share),
        reference: { name: 'bare page', measured: quantile(reference, share) },
        most,
      });
    }
  }
  await slow(1, court);
  const [lateFrames, firstFrames] = await inTurns(late, court, framesOf);
  rows.push({
    figure: 'touch to frame in round 8, 600 marks',
    unit: 'ms',
    measured: quantile(lateFrames, 0.5),
    reference: { name: 'round 1', measured: quantile(firstFrames, 0.5) },
    most: 1.05,
  });
  await keptOf(court.page);
  const [kept, put] = await inTurns(court, keeper, keptOf);
  rows.push({
    figure: 'touch to durable mark, p95',
    unit: 'ms',
    measured: quantile(kept, 0.95),
    reference: { name: 'one strict put', measured: quantile(put, 0.95) },
    most: 1.5,
  });
  rows.push(await longFrames(court));
  for (const { page } of [bare, keeper, court, late]) await page.context().close();
  return rows;
}

/** Frames of more than 50 ms while a round runs and is counted. */
async function longFrames(court: MeasuredPage): Promise<Row> {
  const rate = 6;
  await slow(rate, court);
  await court.page.evaluate(() => {
    const long: number[] = [];
    Object.assign(window, { long });
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) long.push(duration);
    }).observe({ type: 'long-animation-frame' });
  });
  await touch(court.page, court.session, TILES, 2 * TOUCHES, 7);
  const long = await court.page.evaluate(() => Reflect.get(window, 'long') as number[]);
  await slow(1, court);
  return {
    figure: `frames over 50 ms in a counted round, CPU ×${rate}`,
    unit: '',
    measured: long.length,
    most: 0,
  };
}
