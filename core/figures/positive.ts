/** Throws a RangeError unless the value is finite and above 0: a length of time, a tempo. */
export function mustBePositive(name: string, value: number): void {
  if (!(value > 0 && value < Infinity)) {
    throw new RangeError(`${name} must be a finite number above 0, not ${value}`);
  }
}
