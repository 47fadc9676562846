/**
 * So many weeks up to the last practice are what a level, its change and every word of it rest on:
 * what is older says little of now.
 */
export const LATELY_WEEKS = 12;
