import { en } from '../../../app/words/en.ts';
import { figures } from '../../../app/words/figures.en.ts';
import { families } from '../../../core/drill/drill.ts';
import { grouped } from '../../../core/figures/grouped.ts';
import { addressOf, type Look } from './looks.ts';

/** A word of change that a screen says of a player. */
export interface Said {
  address: string;
  player: string;
  /** The kind of work by its name, or 'all'. */
  work: string;
  word: string;
  /** On how many practices it rests, where the screen says so. */
  practices?: number;
  /** Whether the practices stand beside it as dots. */
  drawn?: true;
}

/** Everybody's name, p10 the first. */
export const NAMES = 'Ada Bo Cy Di Eva Flo Gus Hal Ivo Jo Kit Lou Mia Ned Oz'.split(' ');

const WORDS = Object.values(figures.trendWords).join('|');
const KINDS = families.flatMap((family) => {
  const name = en.families[family];
  return [`${name} (${figures.onTarget})`, name];
});

const text = (element: Element | null | undefined): string =>
  (element?.textContent ?? '').replace(/\s+/g, ' ').trim();
const all = (root: Element, selector: string): Element[] => [...root.querySelectorAll(selector)];
const wordIn = (said: string) => new RegExp(`(${WORDS})\\.?$`).exec(said)?.[1];
const countIn = (said: string) => {
  const count = /(\d+) practices?/.exec(said)?.[1];
  return count === undefined ? {} : { practices: Number(count) };
};

/** Every word of change that stands on a screen, or is said of a picture in it. */
export function saidOn({ address, main }: Look): Said[] {
  const [place, player = ''] = address.split('/');
  const on = (said: Omit<Said, 'address'>): Said => ({ address, ...said });
  switch (place) {
    case 'glance':
      return all(main, '.glance-cell').flatMap((cell) => {
        const [, whose = '', kind] = addressOf(cell).split('/');
        const word = wordIn(cell.getAttribute('aria-label') ?? '');
        return word ? [on({ player: whose, work: workOf(kind), word })] : [];
      });
    case 'line': {
      const drawn = all(main, '.graph-dots').some((dots) => dots.getAttribute('d'));
      const [, , kind, target] = address.split('/');
      return all(main, 'section p').flatMap((each) => {
        const word = wordIn(text(each));
        return word
          ? [
              on({
                ...{ player, work: workOf(kind, target !== undefined), word },
                ...countIn(text(each)),
                ...(drawn && { drawn }),
              }),
            ]
          : [];
      });
    }
    case 'numbers':
      return all(main, '.review-players > li').flatMap((row) => {
        const whose = addressOf(row.querySelector('a')!).split('/')[1] ?? '';
        return all(row, 'dl > div').flatMap((each) =>
          kindsIn(text(each.querySelector('dd'))).map((work) =>
            on({ player: whose, work, word: text(each.querySelector('dt')) }),
          ),
        );
      });
    case 'review':
      return (
        player === '' ? ofEvening(main) : [...ofPlayer(main, player), ...overAll(main, player)]
      ).map(on);
    case 'player':
      return ofPlayer(main, player).map(on);
    default:
      return [];
  }
}

const workOf = (kind: string | undefined, onTarget = false): string => {
  const family = families.find((each) => each === kind);
  if (!family) return 'all';
  return onTarget ? `${en.families[family]} (${figures.onTarget})` : en.families[family];
};

/** The kinds of work in a list of them; a name may begin with another's. */
function kindsIn(list: string): string[] {
  let left = list;
  return KINDS.filter((kind) => {
    const without = left.replace(kind, '');
    const has = without !== left;
    left = without;
    return has;
  });
}

const ofPlayer = (main: Element, player: string) =>
  all(main, '.trend').map((trend) => ({
    player,
    work: text(trend.querySelector('.trend-name > span')),
    word: text(trend.querySelector('.trend-name b')),
    ...countIn(text(trend.querySelector('.graph-ends'))),
    ...(trend.querySelector('.graph-dots') && { drawn: true as const }),
  }));

/** Who is said to go up, or down, on the evening page. */
const ofEvening = (main: Element) =>
  all(main, '.finding').flatMap((finding) =>
    (['Up', 'Down'] as const).flatMap((way) =>
      (new RegExp(`${way}: ([^.]+)\\.`).exec(text(finding))?.[1] ?? '')
        .split(/, | and /)
        .filter((name) => name !== '')
        .map((name) => ({
          player: `p${NAMES.indexOf(name) + 10}`,
          work: 'all',
          word: figures.trendWords[way === 'Up' ? 'rising' : 'falling'],
        })),
    ),
  );

const overAll = (main: Element, player: string) =>
  all(main, 'dt')
    .filter((name) => text(name) === figures.review.overall)
    .map((name) => ({
      ...{ player, work: 'all', word: text(name.parentElement?.querySelector('b')) },
      ...countIn(text(name.parentElement?.querySelector('dd'))),
    }));

/** Fewer practices are no evidence of a change, or of none. */
const ENOUGH = 6;

/** Where two screens say different things of one player at one kind of work, or a word has nothing behind it. */
export function contradictions(said: readonly Said[]): string[] {
  const about = grouped(said, ({ player, work }) => `${player} at ${work}`);
  const lookedAt = new Set(
    said.filter(({ address }) => address.startsWith('line/')).map(({ player }) => player),
  );
  return about.flatMap((own) => {
    const whose = `${own[0]!.player} at ${own[0]!.work}`;
    const words = new Set(own.map(({ word }) => word));
    const counts = new Set(own.flatMap(({ practices }) => practices ?? []));
    const needs = [...words].some((word) => word !== figures.trendWords['too-few']);
    const rests = own.some(({ practices = 0, drawn }) => drawn && practices >= ENOUGH);
    const told = own.map(({ address, word, practices }) => `#/${address} ${word} (${practices})`);
    return [
      ...(words.size > 1 ? [`${whose}, different words: ${told.join('; ')}`] : []),
      ...(counts.size > 1 ? [`${whose}, different practices: ${told.join('; ')}`] : []),
      ...(needs && !rests && lookedAt.has(own[0]!.player)
        ? [`${whose}, a word without what it rests on: ${told.join('; ')}`]
        : []),
    ];
  });
}
