/** Throws a RangeError unless the value is a whole number, 0 or more: a count. */
export function mustCount(name: string, value: number): void {
  if (!(Number.isSafeInteger(value) && value >= 0)) {
    throw new RangeError(`${name} must be a whole number, 0 or more, not ${value}`);
  }
}

/** Throws a RangeError unless the value is finite and 0 or more: a time, a length, a load. */
export function mustMeasure(name: string, value: number): void {
  if (!(Number.isFinite(value) && value >= 0)) {
    throw new RangeError(`${name} must be a finite number, 0 or more, not ${value}`);
  }
}

/** Throws a RangeError unless the level of an interval is strictly between 0 and 1. */
export function mustLevel(level: number): void {
  if (!(level > 0 && level < 1)) {
    throw new RangeError(`level must be strictly between 0 and 1, not ${level}`);
  }
}

/** Throws a RangeError unless the value is finite and above 0: a length of time, a tempo. */
export function mustBePositive(name: string, value: number): void {
  if (!(value > 0 && value < Infinity)) {
    throw new RangeError(`${name} must be a finite number above 0, not ${value}`);
  }
}
