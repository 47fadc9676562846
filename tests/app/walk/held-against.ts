import { expect } from 'vitest';
import { isoWeek, weekDays, weekName } from '../../../core/calendar.ts';
import { type AnyEntry, isKnown } from '../../../core/ledger/entry.ts';
import type { Page } from '../phone/page.ts';
import type { Phone } from '../phone/phone.ts';
import {
  goTo,
  lookAtPlayer,
  lookAtReview,
  lookAtTiles,
  lookAtToday,
  lookAtWeek,
} from './looked.ts';
import { type RecountedPractice, type RecountedRound, recount } from './recount.ts';
import { stubShots } from './stub-touches.ts';
import type { Screen } from './walk.ts';

/** Sums of the same numbers in another order differ by less. */
const TINY = 1e-6;

/** A value as it is shown, where it is shown rightly: at a half either neighbour is right. */
const asShown = (
  shown: string | undefined,
  value: number,
  say: (value: number) => string,
): string =>
  [-TINY, TINY].map((off) => say(value + off)).find((said) => said === shown) ?? say(value);

/** What the entries of a page's ledger come to, counted by hand. */
export async function recounted(phone: Phone, page: Page): Promise<RecountedPractice[]> {
  const entries: AnyEntry[] = [];
  const read = async () => {
    for await (const portion of page.app.ledger.allEntries()) entries.push(...portion);
  };
  await phone.through(read());
  return recount(entries.filter(isKnown), page.app.clock.now());
}

/** The counts on the tiles of the round that runs, against the entries. */
export async function holdTiles(phone: Phone, page: Page): Promise<void> {
  const tiles = lookAtTiles(page);
  const open = page.app.practices.openPractice.value;
  const practice = (await recounted(phone, page)).find(({ id }) => id === open?.id);
  const round = practice?.started.at(-1);
  if (!round || round.left || tiles.size === 0) return;
  const squad = [...page.app.ledger.squad.value.values()];
  const namesOf = (players: readonly string[]) =>
    squad.flatMap(({ id, name }) => (players.includes(id) ? [name] : [])).join(' ');
  // One who went on with others in mid-round has the tile of the pair that came last.
  const expected = new Map(
    round.pairs.flatMap((pair) =>
      round.terms.rule === 'on-target'
        ? pair.own.map(({ player, sets }) => [namesOf([player]), sets] as const)
        : [[namesOf(pair.players), pair.sets] as const],
    ),
  );
  for (const [names, shown] of tiles) {
    expect(`${names} ${shown}`).toBe(`${names} ${expected.get(names)}`);
  }
}

/** The numbers of some screens of a page against the entries: of the last week, of a few players. */
export async function holdScreens(
  phone: Phone,
  page: Page,
  screens: readonly Screen[],
): Promise<void> {
  const practices = await recounted(phone, page);
  const last = practices.at(-1)?.date;
  if (screens.includes('today')) await holdToday(phone, page, practices);
  if (screens.includes('week') && last) {
    await holdWeek(phone, page, practices, weekName(isoWeek(last)), false);
  }
  if (screens.includes('player')) {
    for (const player of practices.at(-1)?.here.slice(0, 2) ?? []) {
      await holdPlayer(phone, page, practices, player);
    }
  }
  if (screens.includes('review')) {
    await holdReview(phone, page, practices, undefined);
    await holdLookingBack(phone, page);
  }
  await phone.do(() => page.app.route.go());
}

/** Every number of every screen against the entries, where all is packed and worked out. */
export async function holdWhole(phone: Phone, page: Page): Promise<void> {
  const practices = await recounted(phone, page);
  for (const week of new Set(practices.map(({ date }) => weekName(isoWeek(date))))) {
    await holdWeek(phone, page, practices, week, true);
  }
  await holdReview(phone, page, practices, undefined);
  await holdLookingBack(phone, page);
  for (const player of page.app.ledger.squad.value.keys()) {
    await holdPlayer(phone, page, practices, player);
    await holdReview(phone, page, practices, player);
  }
}

/**
 * The screens on which a coach looks back say no number that is none, no word of nothing, and of each
 * sentence the evidence is a touch away: whatever was played.
 */
async function holdLookingBack(phone: Phone, page: Page): Promise<void> {
  const players = [...page.app.ledger.squad.value.keys()].slice(0, 2);
  for (const address of [
    ...['review', 'glance', 'neglected', 'together', 'sizes', 'season', 'numbers'].map((each) => [
      each,
    ]),
    ...players.flatMap((player) => [
      ['line', player],
      ['line', player, 'volleys'],
      ['season', player],
    ]),
  ]) {
    const root = await goTo(phone, page, ...address);
    const said = `${address.join('/')}: ${root.textContent}`;
    expect(said).not.toMatch(/NaN|undefined|Infinity|∞|\[object|not known/);
    for (const finding of root.querySelectorAll('.finding')) {
      expect(finding.querySelector('a.finding-said')?.getAttribute('href'), said).toMatch(/^#\/./);
      expect(finding.querySelector('[role=img]')?.getAttribute('aria-label'), said).toBeTruthy();
    }
    for (const cell of root.querySelectorAll('.glance-cell')) {
      expect(cell.getAttribute('aria-label'), said).toMatch(/\p{L}/u);
    }
  }
}

async function holdToday(
  phone: Phone,
  page: Page,
  all: readonly RecountedPractice[],
): Promise<void> {
  const shown = await lookAtToday(phone, page);
  const { words, drillText, practices } = page.app;
  const t = words.words.value;
  const open = practices.openPractice.value;
  const practice = all.find(({ id }) => id === open?.id);
  if (!practice) return;
  expect(shown.here).toBe(
    t.today.hereCount(practice.here.length, page.app.ledger.squad.value.size),
  );
  expect(shown.rounds).toEqual(
    practice.started.map((round) => [
      t.named(t.today.roundNumber(round.number), drillText.drillName(round.terms)),
      round.struck ? t.today.struck : round.settled ? t.today.settled : t.today.toSettle,
    ]),
  );
}

const isPlayed = (practice: RecountedPractice) => practice.rounds.length > 0;

async function holdWeek(
  phone: Phone,
  page: Page,
  all: readonly RecountedPractice[],
  week: string,
  whole: boolean,
): Promise<void> {
  const shown = await lookAtWeek(phone, page, week);
  const { words, deskWords, drillText, ledger, estimates } = page.app;
  const t = words.words.value;
  const d = deskWords.deskWords.value.week;
  const [year, number] = week.split('-W').map(Number) as [number, number];
  const days = weekDays(year, number);
  const practices = all.filter(({ date }) => days.includes(date));
  const nameOf = (player: string) => ledger.squad.value.get(player)?.name ?? player;

  const there = new Map<string, Set<string>>();
  for (const practice of practices) {
    if (practice.there.size + practice.rounds.length === 0) continue;
    const day = there.get(practice.date) ?? new Set<string>();
    there.set(practice.date, day);
    for (const player of practice.there) day.add(player);
  }
  expect([...shown.there.keys()]).toEqual([...there.keys()].sort().map((date) => t.date(date)));
  for (const [date, players] of there) {
    const said = shown.there.get(t.date(date)) ?? '';
    const names = [...ledger.squad.value.values()]
      .map(({ name }) => name)
      .filter((name) => said.includes(name));
    expect([date, ...names.toSorted()]).toEqual([date, ...[...players].map(nameOf).toSorted()]);
  }
  if (!practices.some(isPlayed)) return;

  const own = new Map<string, { sets: number; touches: number; seconds: number; days: number }>();
  const totalOf = (player: string) => {
    const total = own.get(player) ?? { sets: 0, touches: 0, seconds: 0, days: 0 };
    own.set(player, total);
    return total;
  };
  for (const players of there.values()) for (const player of players) totalOf(player).days += 1;
  const rounds = practices.flatMap((practice) => practice.rounds);
  const played = new Set<string>();
  for (const share of rounds.flatMap(({ pairs }) => pairs.flatMap((pair) => pair.own))) {
    const total = totalOf(share.player);
    played.add(share.player);
    total.sets += share.sets;
    total.touches += share.touches;
    total.seconds += share.seconds;
  }
  const rowsOf = (table: Map<string, string[]>, columns: number) =>
    Object.fromEntries([...table].map(([name, cells]) => [name, cells.slice(0, columns)]));
  expect(rowsOf(shown.players, 4)).toEqual(
    Object.fromEntries(
      [...own].map(([player, total]) => [
        nameOf(player),
        [
          total.days > 0 ? t.number(total.days) : '—',
          ...(played.has(player)
            ? [
                t.number(total.sets),
                asShown(shown.players.get(nameOf(player))?.[2], total.touches, t.number),
                asShown(shown.players.get(nameOf(player))?.[3], total.seconds, d.inMinutes),
              ]
            : ['—', '—', '—']),
        ],
      ]),
    ),
  );

  const drills = byDrill(rounds);
  expect(rowsOf(shown.drills, 4)).toEqual(
    Object.fromEntries(
      drills.map(({ terms, played }) => {
        const pairs = played.flatMap((round) => round.pairs);
        const touches = pairs
          .flatMap((pair) => pair.own)
          .reduce((sum, { touches }) => sum + touches, 0);
        const seconds = played.reduce((sum, { seconds }) => sum + seconds, 0);
        const cells = shown.drills.get(drillText.drillName(terms));
        return [
          drillText.drillName(terms),
          [
            t.number(played.length),
            t.number(pairs.reduce((sum, { sets }) => sum + sets, 0)),
            asShown(cells?.[2], touches, t.number),
            asShown(cells?.[3], seconds, d.inMinutes),
          ],
        ];
      }),
    ),
  );
  for (const { terms, played } of drills) {
    const name = drillText.drillName(terms);
    const cell = shown.drills.get(name)?.[4] ?? '';
    const sure = whole && estimates.waiting.value === 0;
    holdTouches(page, `${name} in ${week}`, cell, played, sure);
  }

  const columns = ['date', 'practice', 'round', 'drill', 'player', 'sets', 'touches_counted'];
  const shownRows = shown.csv.map((row) =>
    [...columns, 'live_seconds', 'late_marks'].map((column) => row[column]),
  );
  const tenths = (value: number) => String(Number(value.toFixed(1)));
  const table = practices.filter(isPlayed).flatMap((practice) => {
    const same = practices.filter((each) => each.date === practice.date).filter(isPlayed);
    return practice.rounds.flatMap((round) =>
      [...round.pairs]
        .sort((a, b) => (a.letter < b.letter ? -1 : 1))
        .flatMap((pair) =>
          pair.own.map((share) => [
            practice.date,
            String(same.indexOf(practice) + 1),
            String(round.number),
            drillText.drillName(round.terms),
            nameOf(share.player),
            pair.heard ? String(share.sets) : '',
            pair.heard ? share.touches : '',
            share.seconds,
            String(pair.late),
          ]),
        ),
    );
  });
  expect(shownRows).toEqual(
    table.map((row, at) =>
      row.map((cell, column) =>
        typeof cell === 'number' ? asShown(shownRows[at]?.[column], cell, tenths) : cell,
      ),
    ),
  );
}

/** The rounds of each drill, in the order in which the drills were first played. */
function byDrill(rounds: readonly RecountedRound[]) {
  const drills: { terms: RecountedRound['terms']; played: RecountedRound[] }[] = [];
  for (const round of rounds) {
    const known = drills.find(({ terms }) => terms.drill === round.terms.drill);
    if (known) known.played.push(round);
    else drills.push({ terms: round.terms, played: [round] });
  }
  return drills;
}

/** All touches of a drill's rounds, where they are shown at all. */
function holdTouches(
  page: Page,
  what: string,
  cell: string,
  played: readonly RecountedRound[],
  sure: boolean,
): void {
  const heard = played.flatMap(({ terms, pairs }) =>
    pairs.filter((pair) => pair.heard).map((pair) => ({ terms, pair })),
  );
  if (heard.length === 0) return;
  if (cell === '—') {
    if (sure) expect(`${what}: ${cell}`).toBe('all touches, for all was worked out');
    return;
  }
  const touches = heard.reduce((sum, { terms, pair }) => {
    const counted = pair.own.reduce((all, own) => all + own.touches, 0);
    const shots = pair.seconds === 0 ? counted : stubShots(pair.sets, terms.size, pair.seconds);
    return sum + Math.max(counted, shots);
  }, 0);
  const { rounded } = page.app.figureWords.figureWords.value;
  const about = asShown(cell.split(' ')[0], touches, rounded);
  expect(`${what}: ${cell.split(' ')[0]}`).toBe(`${what}: ${about}`);
}

async function holdPlayer(
  phone: Phone,
  page: Page,
  practices: readonly RecountedPractice[],
  player: string,
): Promise<void> {
  const shown = await lookAtPlayer(phone, page, player);
  const { words, drillText } = page.app;
  const t = words.words.value;
  const isIn = (round: RecountedRound) =>
    round.pairs.some((pair) => pair.players.includes(player)) && (round.left || round.over);
  const last = practices.filter((practice) => practice.rounds.some(isIn)).at(-1)?.date;
  const played = practices
    .filter(({ date }) => date === last)
    .flatMap(({ rounds }) => rounds.filter(isIn));
  const drills = new Map<string, number>();
  let counted = 0;
  for (const { terms, pairs } of played) {
    const name = `${drillText.drillName(terms)}; ${t.setCounts(terms.rule, terms.size)}`;
    for (const own of pairs.flatMap((pair) => pair.own)) {
      if (own.player !== player || !own.heard) continue;
      drills.set(name, (drills.get(name) ?? 0) + own.sets);
      counted += own.touches;
    }
  }
  const who = page.app.ledger.squad.value.get(player)?.name;
  expect({ who, ...Object.fromEntries(shown.drills) }).toEqual({
    who,
    ...Object.fromEntries([...drills].map(([name, sets]) => [name, t.number(sets)])),
  });
  if (last !== undefined && shown.counted !== undefined) {
    const { number } = page.app.figureWords.figureWords.value;
    expect(`${who} ${shown.counted}`).toBe(`${who} ${number(counted)}`);
  }
}

/** Sets a minute of each drill and size over the last weeks, which hold the whole walk. */
async function holdReview(
  phone: Phone,
  page: Page,
  practices: readonly RecountedPractice[],
  player: string | undefined,
): Promise<void> {
  const shown = await lookAtReview(phone, page, player);
  const { drillText, figureWords } = page.app;
  const f = figureWords.figureWords.value;
  const rounds = practices.flatMap((practice) => practice.rounds);
  const expected: Record<string, Record<string, string>> = {};
  for (const { terms, played } of byDrill(rounds)) {
    const sizes = new Map<number, { sets: number; seconds: number }>();
    for (const round of played) {
      for (const pair of round.pairs) {
        if (!pair.heard) continue;
        const stints =
          player === undefined ? [pair] : pair.own.filter((own) => own.player === player);
        if (stints.length === 0) continue;
        const size = sizes.get(round.terms.size) ?? { sets: 0, seconds: 0 };
        sizes.set(round.terms.size, size);
        for (const stint of stints) {
          size.sets += stint.sets;
          size.seconds += stint.seconds;
        }
      }
    }
    if (sizes.size === 0) continue;
    const rows = shown.drills.get(drillText.drillName(terms));
    expected[drillText.drillName(terms)] = Object.fromEntries(
      [...sizes].flatMap(([size, { sets, seconds }]) => {
        // A clock that was stopped at once has no minute, and no row.
        if (seconds === 0) return [];
        const row = `${f.review.setsPerMinute}, ${f.sized[terms.rule](size)}`;
        // Fewer than ten say too little of a minute: they stand as they were counted.
        const shown =
          sets < 10 ? f.number(sets) : asShown(rows?.get(row), (60 * sets) / seconds, f.rate);
        return [[row, shown]];
      }),
    );
  }
  const found = Object.fromEntries(
    [...shown.drills].map(([drill, rows]) => [
      drill,
      Object.fromEntries([...rows].filter(([row]) => row.startsWith(f.review.setsPerMinute))),
    ]),
  );
  expect(found).toEqual(expected);
}
