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
 * is read. `undefined` where the matrix is not positive definite to rounding. What is 0 at the
 * beginning of a row stays so and takes no time: unknowns that many others have nothing to do with
 * come first.
 */
export function cholesky(matrix: Float64Array): Float64Array | undefined {
  const n = Math.sqrt(matrix.length);
  const lower = new Float64Array(n * n);
  const firsts = new Int32Array(n);
  for (let i = 0; i < n; i++) {
    const row = i * n;
    let first = 0;
    while (first < i && matrix[row + first] === 0) first++;
    firsts[i] = first;
    for (let j = first; j <= i; j++) {
      const other = j * n;
      let rest = matrix[row + j]!;
      for (let k = Math.max(first, firsts[j]!); k < j; k++) {
        rest -= lower[row + k]! * lower[other + k]!;
      }
      if (i !== j) lower[row + j] = rest / lower[other + j]!;
      // What is left of a diagonal entry holds no digit below this; the comparison also catches NaN.
      else if (rest > 1e-15 * matrix[row + i]!) lower[row + i] = Math.sqrt(rest);
      else return undefined;
    }
  }
  return lower;
}

/** x with L x = right, L a lower triangle; what is 0 at the beginning of `right` takes no time. */
export function solveLower(lower: Float64Array, right: ArrayLike<number>): Float64Array {
  const n = right.length;
  const x = new Float64Array(n);
  let first = 0;
  while (first < n && right[first] === 0) first++;
  for (let i = first; i < n; i++) {
    let rest = right[i]!;
    for (let k = first; k < i; k++) rest -= lower[i * n + k]! * x[k]!;
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

/** The diagonal of the inverse of L Lᵀ, L from `cholesky`, in a third of the time of all of it. */
export function inverseDiagonal(lower: Float64Array): Float64Array {
  const n = Math.sqrt(lower.length);
  const result = new Float64Array(n);
  const x = new Float64Array(n);
  for (let j = 0; j < n; j++) {
    // x is column j of L⁻¹, which is 0 above its own place.
    for (let i = j; i < n; i++) {
      let rest = i === j ? 1 : 0;
      for (let k = j; k < i; k++) rest -= lower[i * n + k]! * x[k]!;
      x[i] = rest / lower[i * n + i]!;
      result[j]! += x[i]! ** 2;
    }
  }
  return result;
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
