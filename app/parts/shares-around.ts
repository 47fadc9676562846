/** Less than this from bottom to top would make a mountain of every wave. */
const LEAST_RANGE = 0.2;

/** Whole tenths around some shares, apart enough and within 0 to 1. */
export function sharesAround(least: number, most: number): [bottom: number, top: number] {
  const tenth = (value: number) => Math.round(10 * value) / 10;
  let bottom = Math.floor(10 * least + 1e-9) / 10;
  let top = Math.ceil(10 * most - 1e-9) / 10;
  while (top - bottom < LEAST_RANGE - 1e-9) {
    if (bottom > 0) bottom = tenth(bottom - 0.1);
    if (top < 1 && top - bottom < LEAST_RANGE - 1e-9) top = tenth(top + 0.1);
  }
  return [bottom, top];
}
