/**
 * The widest interval of a rate, or of a ratio of two, that is shown: its upper limit at most so many
 * times its lower one (ten sets in one span, nineteen in each of two equal ones). Beyond it the truth
 * may be anything that a squad's best and weakest make, and a number would say more than is known. Our
 * choice; common practice, no source.
 */
const WIDEST = 4;

/** Whether an interval is narrow enough to say something; not where its lower limit is 0. */
export const isTelling = ({ low, high }: { low: number; high: number }): boolean =>
  high <= WIDEST * low;
