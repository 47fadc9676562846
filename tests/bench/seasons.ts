import { TOUCHES_MODEL_VERSION } from '../../core/figures/touches.ts';
import { foldPractice } from '../../core/ledger/practice.ts';
import { type Summary, summarise } from '../../core/ledger/summary.ts';
import { season } from '../../demo-data/season.ts';

/** Some 2,000 practices, 60,000 tallies and 600,000 marks, up to this day. */
export const TEN_SEASONS = { weeks: 512, perWeek: 4, players: 12, size: 4 };
/** Practices that go over to a page at once. */
const AT_ONCE = 40;

type KeyedRecord = [key: string, record: unknown];

/** The packs and summaries of seasons that ended on that day, as a phone that has worked out its figures keeps them. */
export function* seasons(lastDate: string, size = TEN_SEASONS): Generator<KeyedRecord[]> {
  const { standing, practices } = season({ seed: 1, lastDate, ...size });
  yield standing.map((entry): KeyedRecord => [`s/${entry.id}`, entry]);
  for (let from = 0; from < practices.length; from += AT_ONCE) {
    yield practices.slice(from, from + AT_ONCE).flatMap(({ entries }): KeyedRecord[] => {
      const practice = foldPractice(entries);
      if (!practice) return [];
      const summary = worked(summarise(practice, (entries.at(-1)?.at ?? 0) + 1));
      return [
        [`c/${practice.id}`, { entries }],
        [`i/${practice.date}/${practice.id}`, summary],
      ];
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
