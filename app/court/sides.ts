import { countsByPlayer } from '../../core/drill/counting-rules.ts';
import type { OpenRound } from '../../core/ledger/practice.ts';
import { endSecond } from '../../core/round/clock.ts';
import type { Mark, Tally } from '../../core/round/tally.ts';
import { strike, takeBack } from '../actions.ts';
import { sound } from '../device/sound.ts';
import { buzz } from '../device/vibrate.ts';

/** What one tile counts for: a pair, or one player of it where tiles are split. */
export interface Side {
  readonly letter: string;
  /** Only where the drill counts for the player who struck. */
  readonly player?: string;
}

export const isSplit = (round: OpenRound): boolean => countsByPlayer(round.terms.rule);

/** The tallies that a screen shows: all, or those of these pairs; one that has stopped is none. */
export const shownTallies = (round: OpenRound, only?: readonly string[]): Tally[] =>
  round.tallies.filter(
    ({ pair, span }) =>
      (only === undefined || only.includes(pair.letter)) && !hasStopped(round, span),
  );

const hasStopped = ({ clock }: OpenRound, span: Tally['span']): boolean =>
  clock !== undefined && span !== undefined && span.to < endSecond(clock);

/** The tiles of a pair, in their order. */
export const sidesOf = (round: OpenRound, { pair }: Tally): Side[] =>
  isSplit(round)
    ? pair.players.map((player) => ({ letter: pair.letter, player }))
    : [{ letter: pair.letter }];

/** The marks of a tile that were not taken back. */
export const marksOn = (round: OpenRound, { letter, player }: Side): Mark[] =>
  (round.marks[letter] ?? []).filter((mark) => !mark.takenBack && mark.player === player);

/** A set is struck: it is on its way to the disk, and what is given back shows it and tells hand and ear. */
export function strikeOn(round: OpenRound, { letter, player }: Side): () => void {
  const show = strike(round, letter, player);
  return () => {
    show();
    buzz('mark');
    sound('count');
  };
}

/** Counts a set, and tells hand and ear of it; the eye sees it on the tile. */
export const countOn = (round: OpenRound, side: Side): void => strikeOn(round, side)();

/** Takes back the last set of a tile, where there is one. */
export function takeBackOn(round: OpenRound, side: Side): void {
  const last = marksOn(round, side).at(-1);
  if (last) takeBack(round, last.id);
}
