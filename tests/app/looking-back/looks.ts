import { isoWeek, weekName } from '../../../core/calendar.ts';
import type { Page } from '../phone/page.ts';
import type { Phone } from '../phone/phone.ts';

/** A screen as it stands at an address. */
export interface Look {
  /** Without its hash: 'line/p10/volleys'. */
  address: string;
  main: Element;
}

/** Screens of the whole squad. */
const OF_SQUAD = [
  ...['review', 'glance', 'numbers', 'neglected', 'together', 'sizes', 'season', 'coverage'],
  ...['week', 'quality'],
];
/** Screens of one player. */
const OF_PLAYER = ['review', 'player', 'line', 'season', 'coverage', 'quality'];

/** Every screen on which a coach looks back, of the squad and of some players. */
export function everyScreen(page: Page, players: readonly string[]): string[] {
  const last = page.app.practices.history.value?.at(-1);
  return [
    ...OF_SQUAD,
    ...(last ? [`week/${weekName(isoWeek(last.date))}`] : []),
    ...OF_PLAYER.flatMap((place) => players.map((player) => `${place}/${player}`)),
  ];
}

/**
 * Goes to some screens, with all that is folded away opened; from a player's line on to that of each
 * kind of work.
 */
export async function* looksOn(
  phone: Phone,
  page: Page,
  screens: readonly string[],
): AsyncGenerator<Look> {
  const addresses = [...screens];
  for (let address = addresses.shift(); address !== undefined; address = addresses.shift()) {
    await phone.do(() => page.app.route.go(...(address ?? '').split('/')));
    for (let part = 0; part < LATE_PARTS && !stands(page); part++) await phone.pass(60, 60);
    for (const fold of page.root.querySelectorAll<HTMLElement>('.fold[aria-expanded="false"]')) {
      await phone.do(() => fold.click());
    }
    const main = page.root.querySelector('main');
    if (!main?.querySelector('h1')?.textContent) throw new Error(`nothing stands at ${address}`);
    if (/^line\/[^/]+$/.test(address)) {
      addresses.push(...[...main.querySelectorAll('.line-kinds a')].slice(1).map(addressOf));
    }
    yield { address, main };
  }
}

/** A screen is loaded when it is first looked at, and so is the part of the app that knows of it. */
const LATE_PARTS = 5;

const stands = ({ root }: Page) => root.querySelector('main h1') !== null;

/** Where a link leads. */
export const addressOf = (link: Element): string =>
  (link.getAttribute('href') ?? '').replace(/^#\//, '');
