/**
 * A cost rounded to a multiple of 2^-10, so that sums of costs come out the same in whatever order
 * they are added.
 */
export const exact = (cost: number): number => Math.round(cost * 1024) / 1024;
