import { Z_OF_80 } from '../../../core/figures/level.ts';
import { LEVEL_PRIORS } from '../../../core/figures/level-priors.ts';
import { fromLogit } from '../../../core/figures/logit.ts';

/** What holds a sentence, a name or a cell with something in it. */
const SPEAKS =
  'h1, h2, h3, p, li, dt, dd, th, caption, figcaption, summary, label, option, a, button';

/** The range that holds four in five players of any squad: in logits, and as a share where a usual squad is. */
const { kind, playerSd, playerKindSd } = LEVEL_PRIORS.back;
const REACH = Z_OF_80 * Math.hypot(playerSd, playerKindSd);
const SQUAD = fromLogit(kind + REACH).share - fromLogit(kind - REACH).share;
/** A figure that is no share is worth its range where that ends at no more than so many times its start. */
const WIDEST = 4;

const textOf = (element: Element): string =>
  (element.textContent ?? '').replace(/\s+/g, ' ').trim();

/** What a person, or a voice, is told on a screen and what pictures are drawn with, as far as it should not be there. */
export function notWorthShowing(main: Element): string[] {
  const empty = [...main.querySelectorAll(SPEAKS)].filter(
    (each) =>
      textOf(each) === '' &&
      !each.getAttribute('aria-label') &&
      !each.querySelector('[aria-label]'),
  );
  const said = [
    ...[...main.querySelectorAll('p, li, dt, dd, td, figcaption')].map(textOf),
    ...[...main.querySelectorAll('[aria-label]')].map(
      (each) => each.getAttribute('aria-label') ?? '',
    ),
  ];
  return [
    ...(main.innerHTML.match(/.{0,60}(NaN|undefined|Infinity|∞|\[object|>null<).{0,40}/g) ?? []),
    ...empty.map(({ outerHTML }) => `empty: ${outerHTML.slice(0, 120)}`),
    ...said.filter(isBroken).map((text) => `broken: ${text}`),
    ...said.filter(contradictsItself).map((text) => `contradicts itself: ${text}`),
    ...[...new Set(said.flatMap(rangesIn))].filter(isTooWide).map((range) => `too wide: ${range}`),
  ];
}

/** A sentence in which something is missing. */
const isBroken = (text: string) => /\(\s*\)|[:,(]\s*[.,;)]|\s[.,;]|^[.,;:]/.test(text);

/** The squad gets better, or worse, by shares that say otherwise. */
function contradictsItself(text: string): boolean {
  const [, way, now, before] =
    /squad gets (better|less back): (\d+)% .*?(\d+)% \d+ weeks? ago/.exec(text) ?? [];
  return way === 'better' ? Number(now) <= Number(before) : Number(now) >= Number(before);
}

/** "60% to 70%", "between 60% and 70%", "0.4 to 1.2": ranges of shares and of other figures. */
const rangesIn = (text: string): string[] =>
  text.match(/\(\S+ to \S+\)|between \S+% and \S+%/g) ?? [];

function isTooWide(range: string): boolean {
  const [low = 0, high = 0] = (range.match(/[\d.,]+/g) ?? []).map((n) =>
    Number(n.replaceAll(',', '')),
  );
  if (!range.includes('%')) return high > WIDEST * low;
  // What is shown is rounded: the true limits may lie half of a hundredth further in. Near nothing or
  // everything a narrow range is wide in logits, about a half it is wide as a share.
  const [from, to] = [(low + 0.5) / 100, (high - 0.5) / 100];
  const logit = (share: number) => Math.log(share / (1 - share));
  return to - from > SQUAD && logit(to) - logit(from) > 2 * REACH;
}
