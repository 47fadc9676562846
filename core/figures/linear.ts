/**
 * Dense linear algebra for the few dozen unknowns of a squad. Matrices are square and lie row by
 * row in a Float64Array of n² numbers.
 */

/** Σ x y. */
export function dot(x: ArrayLike<number>, y: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < x.length; i++) sum += x[i]! * y[i]!;
  return sum;
}

/**
 * Lower triangle L of a symmetric positive definite matrix, matrix = L Lᵀ; only the lower triangle
 * is read. `undefined` where the matrix is not positive definite to rounding.
 */
export function cholesky(matrix: Float64Array): Float64Array | undefined {
  const n = Math.sqrt(matrix.length);
  const lower = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let rest = matrix[i * n + j]!;
      for (let k = 0; k < j; k++) rest -= lower[i * n + k]! * lower[j * n + k]!;
      if (i !== j) lower[i * n + j] = rest / lower[j * n + j]!;
      // What is left of a diagonal entry holds no digit below this; the comparison also catches NaN.
      else if (rest > 1e-15 * matrix[i * n + i]!) lower[i * n + i] = Math.sqrt(rest);
      else return undefined;
    }
  }
  return lower;
}

/** x with L x = right, L a lower triangle. */
export function solveLower(lower: Float64Array, right: ArrayLike<number>): Float64Array {
  const n = right.length;
  const x = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    let rest = right[i]!;
    for (let k = 0; k < i; k++) rest -= lower[i * n + k]! * x[k]!;
    x[i] = rest / lower[i * n + i]!;
  }
  return x;
}

/** x with L Lᵀ x = right, L from `cholesky`. */
export function solve(lower: Float64Array, right: ArrayLike<number>): Float64Array {
  const n = right.length;
  const x = solveLower(lower, right);
  for (let i = n - 1; i >= 0; i--) {
    let rest = x[i]!;
    for (let k = i + 1; k < n; k++) rest -= lower[k * n + i]! * x[k]!;
    x[i] = rest / lower[i * n + i]!;
  }
  return x;
}

/** Inverse of L Lᵀ, L from `cholesky`. */
export function inverse(lower: Float64Array): Float64Array {
  const n = Math.sqrt(lower.length);
  const result = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    const unit = new Float64Array(n);
    unit[i] = 1;
    result.set(solve(lower, unit), i * n);
  }
  return result;
}

/** log det of L Lᵀ, L from `cholesky`. */
export function logDeterminant(lower: Float64Array): number {
  const n = Math.sqrt(lower.length);
  let sum = 0;
  for (let i = 0; i < n; i++) sum += 2 * Math.log(lower[i * n + i]!);
  return sum;
}

/**
 * A basis of all x with matrix · x = 0, by Gauss-Jordan elimination with row exchanges; empty where
 * the matrix has full rank. A pivot below 1e-9 of the largest entry counts as 0, so this is for
 * matrices of small whole numbers, where the two are far apart.
 */
export function nullSpace(matrix: Float64Array): Float64Array[] {
  const n = Math.sqrt(matrix.length);
  const rows = Array.from({ length: n }, (_, i) => matrix.slice(i * n, (i + 1) * n));
  const zero = 1e-9 * matrix.reduce((largest, entry) => Math.max(largest, Math.abs(entry)), 0);
  const pivots: number[] = [];
  const free: number[] = [];
  for (let column = 0; column < n; column++) {
    const rank = pivots.length;
    let best = rank;
    for (let i = rank; i < n; i++) {
      if (Math.abs(rows[i]![column]!) > Math.abs(rows[best]![column]!)) best = i;
    }
    if (rank === n || Math.abs(rows[best]![column]!) <= zero) {
      free.push(column);
      continue;
    }
    const row = rows[best]!;
    rows[best] = rows[rank]!;
    rows[rank] = row;
    const pivot = row[column]!;
    for (let j = column; j < n; j++) row[j]! /= pivot;
    for (const other of rows) {
      const factor = other[column]!;
      if (other === row || factor === 0) continue;
      for (let j = column; j < n; j++) other[j]! -= factor * row[j]!;
    }
    pivots.push(column);
  }
  return free.map((column) => {
    const x = new Float64Array(n);
    x[column] = 1;
    pivots.forEach((pivot, i) => {
      x[pivot] = -rows[i]![column]!;
    });
    return x;
  });
}
