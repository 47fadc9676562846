/*
 * In the place of the model of all touches, for walks: what it says of a tally is known beforehand,
 * so that a sum tells whether every tally was asked, and asked anew where it was put right.
 */
export const TOUCHES_MODEL_VERSION = 1;

/** So many balls beyond those in sets, a second: no round number, so that no sum stands at a half. */
const PER_SECOND = 0.3710937;

/** All touches of a round, as the stub has them. */
export const stubShots = (sets: number, size: number, seconds: number): number =>
  sets * size + PER_SECOND * seconds;

export function estimateShots({
  sets,
  size,
  seconds,
}: {
  sets: number;
  size: number;
  seconds: number;
}) {
  const shots = stubShots(sets, size, seconds);
  const limits = { shots, sd: 0, low: shots, high: shots };
  return { ...limits, consistency: 0.8, consistencySd: 0.05, misses: 1, implausible: false };
}
