import type { Summary } from '../ledger/summary.ts';
import { grouped } from './grouped.ts';
import { shareInterval } from './interval.ts';
import { looksOf, type Seen } from './looks.ts';
import { lastWeeks } from './review.ts';
import { type ShareWord, shareChange, shareWord } from './share-change.ts';

/** Fewer looks than this are too few to be shown as a share: our choice. */
export const FEWEST_LOOKS = 8;
/** Weeks that are put together, up to the last practice. */
export const LOOK_WEEKS = 4;

/** In how many of some looks a focus was held. */
export interface Held {
  held: number;
  looks: number;
  /** The share with Wilson's 95% interval, 0 to 1; undefined of too few looks. */
  share?: { share: number; low: number; high: number };
}

/** How a focus was held in the last weeks, beside as many weeks before. */
export interface FocusHeld {
  focus: string;
  now: Held;
  before: Held;
  /** Undefined where one of the two has too few looks. */
  change?: ShareWord;
}

export interface SquadFocus extends FocusHeld {
  /** Each player who was looked at in either stretch. */
  players: ({ player: string } & FocusHeld)[];
  /** The surest fall first. */
  slip: number;
}

/**
 * How each focus is held by the squad and by each player of it, over the four weeks up to the last
 * practice and the four before; what falls most surely first. The squad's change holds every player
 * beside the own looks (see share-change.ts); its share puts all looks together.
 *
 * @param summaries in any order
 */
export function fociHeld(summaries: readonly Summary[]): SquadFocus[] {
  const spans = lastWeeks(summaries, LOOK_WEEKS);
  const now = looksOf(spans.now).map((look) => ({ look, isNow: true }));
  const before = looksOf(spans.before).map((look) => ({ look, isNow: false }));
  const foci = grouped([...before, ...now], ({ look }) => look.focus).map((own): SquadFocus => {
    const focus = own[0]!.look.focus;
    const players = grouped(own, ({ look }) => look.player).map((looks) => ({
      player: looks[0]!.look.player,
      focus,
      ...stretches(looks),
    }));
    const known = players.map(({ before, now }) => ({ before, after: now }));
    const all = stretches(own);
    const change = shareChange(known);
    return {
      focus,
      now: all.now,
      before: all.before,
      ...(isKnown(all) && { change: shareWord(change) }),
      players: players.map((each) => ({
        ...each,
        ...(isKnown(each) && {
          change: shareWord(shareChange([{ before: each.before, after: each.now }])),
        }),
      })),
      slip: isKnown(all) ? (change ?? 0) : 0,
    };
  });
  return foci.sort((a, b) => a.slip - b.slip);
}

/** How one player holds each focus that was looked at in the last four weeks; most looks first. */
export const ownFoci = (summaries: readonly Summary[], player: string): FocusHeld[] =>
  fociHeld(summaries)
    .flatMap(({ players }) => players.filter((each) => each.player === player))
    .filter(({ now }) => now.looks > 0)
    .sort((a, b) => b.now.looks - a.now.looks);

/** The foci that the squad holds less often than in the four weeks before. */
export const slippingFoci = (summaries: readonly Summary[]): string[] =>
  fociHeld(summaries)
    .filter(({ change }) => change === 'falling')
    .map(({ focus }) => focus);

/** In how many of some looks the focus was held. */
export function heldIn(looks: readonly Pick<Seen, 'held'>[]): Held {
  const held = looks.filter((look) => look.held).length;
  const share = looks.length >= FEWEST_LOOKS ? shareInterval(held, looks.length) : undefined;
  return { held, looks: looks.length, ...(share && { share }) };
}

const stretches = (looks: readonly { look: Seen; isNow: boolean }[]) => ({
  now: heldIn(looks.filter(({ isNow }) => isNow).map(({ look }) => look)),
  before: heldIn(looks.filter(({ isNow }) => !isNow).map(({ look }) => look)),
});

const isKnown = ({ now, before }: Pick<FocusHeld, 'now' | 'before'>): boolean =>
  now.share !== undefined && before.share !== undefined;
