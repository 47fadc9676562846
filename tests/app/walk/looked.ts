import Papa from 'papaparse';
import type { Page } from '../phone/page.ts';
import type { Phone } from '../phone/phone.ts';

/*
 * What a person reads off the screens of a page: they are drawn, and their numbers found by roles,
 * labels and the words in use.
 */

const text = (element: Element | null | undefined): string =>
  (element?.textContent ?? '').replace(/\s+/g, ' ').trim();

const all = (root: Element | null | undefined, selector: string): Element[] =>
  root ? [...root.querySelectorAll(selector)] : [];

/** Goes to a screen by its address and waits until it stands. */
export async function goTo(phone: Phone, page: Page, ...parts: string[]): Promise<Element> {
  await phone.do(() => page.app.route.go(...parts));
  for (let look = 0; look < 4; look++) await phone.pass(60, 60);
  return page.root;
}

/** The numbers of a table by the id of its heading: by the name of the row, in their columns. */
function table(root: Element, label: string): Map<string, string[]> {
  const found = root.querySelector(`table[aria-labelledby="${label}"]`);
  return new Map(
    all(found, 'tbody tr').map((row) => [
      text(row.querySelector('th')),
      all(row, 'td').map((cell) => text(cell.querySelector('button'))),
    ]),
  );
}

export interface LookedWeek {
  /** What is said of who was there, by date as it is said. */
  there: Map<string, string>;
  players: Map<string, string[]>;
  drills: Map<string, string[]>;
  /** Rows of the table that was handed over, by column. */
  csv: Record<string, string>[];
}

export async function lookAtWeek(phone: Phone, page: Page, week: string): Promise<LookedWeek> {
  const root = await goTo(phone, page, 'week', week);
  const there = new Map(
    all(root, '.week-days > li').map((day) => [
      text(day.querySelector('h3')),
      text(day.querySelector('p')),
    ]),
  );
  const players = table(root, 'by-player');
  const drills = table(root, 'by-drill');
  const handOver = all(root, 'section[aria-labelledby="export"] button').find(
    (button) => text(button) === page.app.deskWords.deskWords.value.week.handOver,
  ) as HTMLElement | undefined;
  let csv: Record<string, string>[] = [];
  if (handOver) {
    const before = page.shared.length;
    await phone.do(() => handOver.click());
    const file = page.shared.slice(before).at(-1);
    const parsed = Papa.parse<Record<string, string>>(
      (await file?.text())?.replace(/^\uFEFF/, '') ?? '',
      {
        header: true,
        skipEmptyLines: true,
      },
    );
    csv = parsed.data;
  }
  return { there, players, drills, csv };
}

export interface LookedPlayer {
  /** The least that was struck on the last day: touches in sets. */
  counted: string | undefined;
  /** Sets by the name of the drill and how its sets count. */
  drills: Map<string, string>;
}

export async function lookAtPlayer(
  phone: Phone,
  page: Page,
  player: string,
): Promise<LookedPlayer> {
  const root = await goTo(phone, page, 'player', player);
  const counted = root.querySelector('.own-total b.number');
  const drills = new Map(
    all(root, 'main section.part')
      .filter((part) => part.querySelector('.own-kinds') && part.querySelector('p.small.faint'))
      .map((part) => [
        `${text(part.querySelector('h2'))}; ${text(part.querySelector('p.small.faint'))}`,
        text(part.querySelector('.own-counts b.number')) || '0',
      ]),
  );
  return { counted: counted ? text(counted) : undefined, drills };
}

export interface LookedReview {
  /** By drill, what is said under each name: the first number of each. */
  drills: Map<string, Map<string, string>>;
}

export async function lookAtReview(
  phone: Phone,
  page: Page,
  player?: string,
): Promise<LookedReview> {
  const root = await goTo(
    phone,
    page,
    ...(player === undefined ? ['numbers'] : ['review', player]),
  );
  return {
    drills: new Map(
      all(root, 'details.review-drill').map((drill) => [
        text(drill.querySelector('summary')),
        new Map(
          all(drill, 'dl > div').map((row) => [
            text(row.querySelector('dt')),
            text(row.querySelector('dd b.number')),
          ]),
        ),
      ]),
    ),
  };
}

export interface LookedToday {
  here: string;
  /** The rounds of the practice, each with what is said of it. */
  rounds: [name: string, state: string][];
}

export async function lookAtToday(phone: Phone, page: Page): Promise<LookedToday> {
  const root = await goTo(phone, page);
  return {
    here: text(root.querySelector('section[aria-labelledby="here"] header .number')),
    rounds: all(root, 'section[aria-labelledby="played"] ol > li').map((row) => [
      text(row.querySelector('a')),
      text(row.querySelector('span')),
    ]),
  };
}

/** The counts on the tiles of a round, by the names on them in the order of the squad. */
export function lookAtTiles(page: Page): Map<string, string> {
  const squad = [...page.app.ledger.squad.value.values()].map(({ name }) => name);
  return new Map(
    all(page.root, '.tile').map((tile) => {
      const names = text(tile.querySelector('.tile-name'));
      const sets = tile.querySelector('.tile-sets')?.firstChild?.textContent ?? '';
      return [squad.filter((name) => names.includes(name)).join(' '), sets];
    }),
  );
}
