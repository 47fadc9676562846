import { TOUCHES_MODEL_VERSION } from '../../core/figures/touches.ts';
import { foldPractice } from '../../core/ledger/practice.ts';
import { type Summary, summarise } from '../../core/ledger/summary.ts';
import { type Season, season } from '../../demo-data/season.ts';
import { putRecords } from '../browser/seed.ts';
import { startLongRound } from '../faults/court.ts';
import { Phone } from '../faults/phone.ts';
import { Host } from '../faults/served.ts';

/** Some 2,000 practices, 60,000 tallies and 600,000 marks. */
const TEN_SEASONS = { weeks: 512, perWeek: 4, players: 12, size: 4 } as const;
const OPENINGS = 9;
const TURNS = 5;
const MARKS_A_TURN = 20;
/** Practices that go over to the page at once. */
const AT_ONCE = 40;

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

/** The packs and summaries of a season, as a phone that has worked out its figures keeps them. */
function* packs({ practices }: Season): Generator<[key: string, record: unknown][]> {
  for (let from = 0; from < practices.length; from += AT_ONCE) {
    yield practices.slice(from, from + AT_ONCE).flatMap(({ entries }) => {
      const practice = foldPractice(entries);
      if (!practice) return [];
      const summary = worked(summarise(practice, (entries.at(-1)?.at ?? 0) + 1));
      return [
        [`c/${practice.id}`, { entries }],
        [`i/${practice.date}/${practice.id}`, summary],
      ] as [string, unknown][];
    });
  }
}

/** With an estimate beside each tally; what it says makes no difference here. */
const worked = (summary: Summary): Summary => ({
  ...summary,
  rounds: summary.rounds.map((round) => ({
    ...round,
    tallies: round.tallies.map((tally) => ({
      ...tally,
      estimate: { model: TOUCHES_MODEL_VERSION, shots: 50, sd: 5, low: 44, high: 56 },
    })),
  })),
});

/** Milliseconds from the start of the navigation to the day's practice on the screen. */
async function openingOf(phone: Phone): Promise<number> {
  const page = await phone.open((context) =>
    context.addInitScript(() => {
      const shown = new Promise<number>((resolve) => {
        new MutationObserver((_, observer) => {
          if (!document.querySelector('main h1')) return;
          observer.disconnect();
          requestAnimationFrame(() => resolve(performance.now()));
        }).observe(document, { childList: true, subtree: true });
      });
      Object.assign(window, { shown });
    }),
  );
  const took = await page.evaluate(() => Reflect.get(window, 'shown') as Promise<number>);
  // What is read in the background belongs to this opening, not to the next.
  await page.waitForTimeout(1_000);
  await phone.close();
  return took;
}

/** Milliseconds from the touch of a tile to the sign that its mark is on the disk. */
const savingOf = (phone: Phone): Promise<number[]> =>
  phone.page.evaluate(async (marks) => {
    const took: number[] = [];
    const tile = document.querySelector('.tile-inside') ?? document.body;
    const isSaved = () => tile.querySelector('.tile-saved[data-saved="true"]') !== null;
    for (let mark = 0; mark < marks; mark++) {
      const started = performance.now();
      tile
        .querySelector('.tile-count')
        ?.dispatchEvent(new PointerEvent('pointerdown', { bubbles: true, button: 0 }));
      await new Promise<void>((resolve) => {
        let waited = false;
        const observer = new MutationObserver(() => {
          if (!isSaved()) waited = true;
          else if (waited) {
            observer.disconnect();
            resolve();
          }
        });
        observer.observe(tile, { childList: true, subtree: true, attributes: true });
      });
      took.push(performance.now() - started);
    }
    return took;
  }, MARKS_A_TURN);

/** The lines to print: opening and saving a mark with ten seasons stored, against none. */
export async function ledgerBench(): Promise<string[]> {
  const host = await Host.of();
  const [none, ten] = [new Phone(host.address), new Phone(host.address)];
  try {
    const stored = season({ seed: 1, lastDate: '2026-11-20', ...TEN_SEASONS });
    let [practices, tallies] = [0, 0];
    await none.open();
    const page = await ten.open();
    await page.getByRole('heading', { level: 1 }).waitFor();
    for (const records of packs(stored)) {
      await putRecords(page, records);
      for (const [key, record] of records) {
        if (!key.startsWith('i/')) continue;
        practices += 1;
        for (const round of (record as Summary).rounds) tallies += round.tallies.length;
      }
    }
    await putRecords(
      page,
      stored.standing.map((entry) => [`s/${entry.id}`, entry]),
    );
    const marks = stored.practices
      .flatMap(({ entries }) => entries)
      .filter(({ kind }) => kind === 'mark').length;
    for (const phone of [none, ten]) await phone.page.evaluate(() => navigator.serviceWorker.ready);
    await Promise.all([none.close(), ten.close()]);

    const opening = { none: [] as number[], ten: [] as number[] };
    for (let turn = 0; turn < OPENINGS; turn++) {
      opening.none.push(await openingOf(none));
      opening.ten.push(await openingOf(ten));
    }

    const saving = { none: [] as number[], ten: [] as number[] };
    for (const phone of [none, ten]) {
      await phone.open();
      await startLongRound(phone.page);
      await phone.page.waitForTimeout(5_000);
    }
    for (let turn = 0; turn < TURNS; turn++) {
      saving.none.push(...(await savingOf(none)));
      saving.ten.push(...(await savingOf(ten)));
    }

    const line = (what: string, times: { none: number[]; ten: number[] }) => {
      const [before, after] = [median(times.none), median(times.ten)];
      return `  ${what.padEnd(28)} ${before.toFixed(1).padStart(7)} ms ${after.toFixed(1).padStart(7)} ms   × ${(after / before).toFixed(2)}`;
    };
    return [
      `Ten seasons stored (${practices} practices, ${tallies} tallies, ${marks} marks) against none, medians`,
      line(`opening, ${OPENINGS} times each`, opening),
      line(`saving a mark, ${saving.none.length} each`, saving),
    ];
  } finally {
    await Promise.all([none.discard(), ten.discard()]);
    await host.close();
  }
}
