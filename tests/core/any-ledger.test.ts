import { describe, expect, test } from 'vitest';
import { isoWeek } from '../../core/calendar.ts';
import { families } from '../../core/drill/drill.ts';
import { starterDrills } from '../../core/drill/starter-drills.ts';
import { lastDay } from '../../core/figures/last-day.ts';
import { toldLevel } from '../../core/figures/level.ts';
import { fitLevels, type LevelFit } from '../../core/figures/level-fit.ts';
import { levelLine } from '../../core/figures/level-line.ts';
import { levelTallies } from '../../core/figures/level-tallies.ts';
import { changeWord } from '../../core/figures/level-word.ts';
import { tellOwnDay } from '../../core/figures/own-day-told.ts';
import { lastWeeks } from '../../core/figures/review.ts';
import { seasonWork, termTouches } from '../../core/figures/season-work.ts';
import { sizeFits } from '../../core/figures/size-fit.ts';
import { ownDay } from '../../core/figures/usual.ts';
import { weekWork } from '../../core/figures/week-work.ts';
import { findings } from '../../core/planning/findings.ts';
import { leftOut } from '../../core/planning/left-out.ts';
import { meetingsOf } from '../../core/planning/meetings.ts';
import { nextPartners } from '../../core/planning/next-partners.ts';
import { whatIsDue } from '../../core/planning/what-is-due.ts';
import { anyLedger, LAST } from './any-ledger.ts';

/*
 * Whatever was counted, nothing that is shown is a number that is none, an interval wider than the
 * whole of a squad, or a word without what it rests on: ledgers by chance, from one tally to ten
 * seasons. LEDGERS=500 goes through five hundred of them.
 */

const LEDGERS = Number(process.env.LEDGERS ?? 60);
/** A test of so many, each. */
const PORTION = 10;
/** Of a round of the next block. */
const SECONDS = 120;

/** How many practices the ledgers had that were looked at so far. */
const lengths = new Map<number, number>();

/** Whether a number within is none; what is left out says that there is none, and is none. */
function holdsNoNumber(value: unknown): boolean {
  if (typeof value === 'number') return !Number.isFinite(value);
  if (value instanceof Map) return holdsNoNumber([...value]);
  return typeof value === 'object' && value !== null && Object.values(value).some(holdsNoNumber);
}

/** The range in logits of the 80% interval of a player of whom nothing is known. */
const squadSpread = ({ priors }: LevelFit) =>
  2 * 1.2815515655446004 * Math.hypot(priors.playerSd, priors.playerKindSd);
const logit = (share: number) => Math.log(share / (1 - share));

function faults(seed: number): string[] {
  const { summaries, players } = anyLedger(seed);
  lengths.set(seed, summaries.length);
  const wrong: string[] = [];
  const fits = [false, true].map((onTarget) => {
    const data = levelTallies(summaries, onTarget);
    return data && fitLevels(data);
  });
  const [fit] = fits;
  const told = fits.flatMap((each) =>
    each
      ? families.flatMap((kind) =>
          players.flatMap((player) => {
            const level = toldLevel(each, player, kind);
            if (level && logit(level.high) - logit(level.low) > squadSpread(each) + 1e-9) {
              wrong.push(`level of ${player} at ${kind}: ${level.low} to ${level.high}`);
            }
            const line = level && levelLine(each, { player, kind });
            const end = line?.at(-1);
            if (level && Math.abs(end!.share - level.share) > 1e-9) wrong.push('line and level');
            return level ? [level, line] : [];
          }),
        )
      : [],
  );
  const sizes = fit ? sizeFits(fit, lastWeeks(summaries, 4).now, SECONDS, () => undefined) : [];
  const evening = findings({
    ...{ players, fit, sizes },
    left: leftOut(summaries, LAST, players),
    partners: nextPartners(
      { here: players, levels: new Map(), meetings: meetingsOf(summaries, LAST), wishes: [] },
      summaries,
      LAST,
    ),
    drills: starterDrills,
    daysSince: whatIsDue(summaries, LAST, []).drillDays,
  });
  for (const finding of evening.found) {
    if (finding.about === 'need' && !(finding.need.sure >= 0.9 && finding.level.share > 0)) {
      wrong.push('a need without its evidence');
    }
    if (finding.about === 'change' && fit) {
      for (const [word, names] of [
        ['rising', finding.rising],
        ['falling', finding.falling],
      ] as const) {
        if (names.some((player) => changeWord(fit, player) !== word))
          wrong.push('a word for nothing');
      }
      if (new Set(fit.tallies.map(({ practice }) => practice)).size < 6) wrong.push('too early');
    }
    if (finding.about === 'left-out' && !finding.left.players.some(({ overdue }) => overdue)) {
      wrong.push('left out by nobody');
    }
  }
  const days = players.flatMap((player) => {
    const day = lastDay(summaries, player);
    return day ? [tellOwnDay(ownDay(day.earlier, day.day, player))] : [];
  });
  const shown = {
    told,
    ...{ sizes, evening, days },
    week: weekWork(summaries, isoWeek(summaries.at(-1)!.date)),
    season: seasonWork(summaries, 12),
    term: termTouches(summaries, players[0]),
  };
  for (const [what, value] of Object.entries(shown)) {
    if (holdsNoNumber(value)) wrong.push(`${what} holds a number that is none`);
  }
  return wrong.map((what) => `ledger ${seed}: ${what}`);
}

describe(`of ${LEDGERS} ledgers by chance`, () => {
  test.each(Array.from({ length: LEDGERS / PORTION }, (_, at) => at * PORTION))(
    'nothing that is shown is no number, wider than a squad, or a word for nothing, from the %i. on',
    (first) => {
      const seeds = Array.from({ length: PORTION }, (_, at) => first + at);
      expect(seeds.flatMap(faults)).toEqual([]);
    },
    120_000,
  );

  test('the smallest is one tally, and the largest are as long as seasons', () => {
    expect(anyLedger(0).summaries[0]?.rounds[0]?.tallies).toHaveLength(1);
    const first = Array.from(
      { length: 60 },
      (_, seed) => lengths.get(seed) ?? anyLedger(seed).summaries.length,
    );
    expect(Math.max(...first)).toBeGreaterThan(1_000);
    expect(first.filter((length) => length < 10).length).toBeGreaterThan(10);
  });
});
