/** What a look at a player shows: the focus was held, it was not, or nobody could see it. */
export const sights = ['yes', 'no', 'unseen'] as const;
export type Sight = (typeof sights)[number];

/** One look at one player that somebody answered. */
export interface Look {
  player: string;
  focus: string;
  /** Of live clock, at which it was asked for. */
  second: number;
  saw: Sight;
  /** The phone that says so. */
  by: string;
}
