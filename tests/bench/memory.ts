import type { Bench, MeasuredPage } from './measured-phone.ts';
import type { Row } from './row.ts';
import { touch } from './touch.ts';

const ROUNDS = 8;
const PAIRS = 6;
/** The time in which a set of ten can be struck. */
const LEAST_MS = 6_000;

/** Bytes that are in use once what nobody needs is gone. */
async function heapOf({ session }: MeasuredPage): Promise<number> {
  await session.send('HeapProfiler.collectGarbage');
  return (await session.send('Runtime.getHeapUsage')).usedSize;
}

/** What the page holds in memory after the eighth round of a block, beside what it held after the first. */
export async function memory(bench: Bench): Promise<Row[]> {
  const court = await bench.court({ planned: ROUNDS });
  const { page } = court;
  let first = 0;
  for (let round = 1; round <= ROUNDS; round++) {
    // One set a pair, and none too soon: a doubtful one would keep the round from being settled by one touch.
    await page.waitForTimeout(LEAST_MS);
    for (let pair = 1; pair <= PAIRS; pair++) {
      await touch(page, court.session, `.tile-pair:nth-child(${pair}) .tile-count`, 1, pair);
    }
    await page.getByRole('button', { name: 'Stop', exact: true }).tap();
    await page.getByRole('button', { name: 'Stop now?' }).tap();
    const onward = page.getByRole('button', { name: /^(Next round|Done)/ }).first();
    await onward.waitFor();
    if (round === 1) first = await heapOf(court);
    if (round === ROUNDS) break;
    await settle(court);
  }
  const last = await heapOf(court);
  await page.context().close();
  return [
    {
      figure: `memory after ${ROUNDS} rounds`,
      unit: 'MB',
      measured: last / 1e6,
      reference: { name: 'after the first', measured: first / 1e6 },
      most: 1.1,
    },
  ];
}

/** From a round that is over to the next one, running. */
async function settle({ page }: MeasuredPage): Promise<void> {
  await page.getByRole('button', { name: /^Next/ }).first().tap();
  await page.getByRole('button', { name: /^Start/ }).tap();
  await page.locator('.tile-count').first().waitFor();
}
