import { describe, expect, it } from 'vitest';
import {
  cholesky,
  dot,
  inverseDiagonal,
  nullSpace,
  solve,
  solveLower,
} from '../../../core/figures/linear.ts';

// The Hilbert matrix of order 3 has an inverse of whole numbers, its first row 9, -36, 30 and its
// diagonal 9, 192, 180 (Hilbert 1894; from memory, and checked by hand).
const hilbert = Float64Array.of(1, 1 / 2, 1 / 3, 1 / 2, 1 / 3, 1 / 4, 1 / 3, 1 / 4, 1 / 5);

describe('cholesky', () => {
  it('gives a lower triangle whose square is the matrix', () => {
    const lower = cholesky(hilbert)!;
    for (let i = 0; i < 3; i++) {
      for (let j = 0; j < 3; j++) {
        if (j > i) expect(lower[3 * i + j]).toBe(0);
        const product = dot(lower.subarray(3 * i, 3 * i + 3), lower.subarray(3 * j, 3 * j + 3));
        expect(product).toBeCloseTo(hilbert[3 * i + j]!, 15);
      }
    }
  });

  it('is undefined for a matrix that is not positive definite', () => {
    expect(cholesky(Float64Array.of(1, 2, 2, 1))).toBeUndefined();
    expect(cholesky(Float64Array.of(1, 1, 1, 1))).toBeUndefined();
    expect(cholesky(Float64Array.of(0))).toBeUndefined();
    expect(cholesky(Float64Array.of(Number.NaN))).toBeUndefined();
    expect(cholesky(Float64Array.of(Number.POSITIVE_INFINITY))).toBeUndefined();
  });

  it('solves', () => {
    const lower = cholesky(hilbert)!;
    expect(Array.from(solve(lower, [1, 0, 0]), Math.round)).toEqual([9, -36, 30]);
    const half = solveLower(lower, [1, 0, 0]);
    expect(dot(half, half)).toBeCloseTo(9, 10);
  });
});

describe('what is 0 at the beginning of rows', () => {
  // An arrow: three unknowns that meet in the fourth only, so that L has the same zeros.
  const arrow = Float64Array.of(4, 0, 0, 2, 0, 9, 0, 3, 0, 0, 16, 4, 2, 3, 4, 7);

  it('changes no factor and no solution', () => {
    const lower = cholesky(arrow)!;
    expect([...lower]).toEqual([2, 0, 0, 0, 0, 3, 0, 0, 0, 0, 4, 0, 1, 1, 1, 2]);
    expect([...solveLower(lower, [0, 0, 8, 10])]).toEqual([0, 0, 2, 4]);
    expect([...solveLower(lower, [0, 0, 0, 0])]).toEqual([0, 0, 0, 0]);
  });
});

describe('inverseDiagonal', () => {
  it('is the diagonal of the inverse', () => {
    const diagonal = inverseDiagonal(cholesky(hilbert)!);
    [9, 192, 180].forEach((entry, i) => {
      expect(diagonal[i]).toBeCloseTo(entry, 9);
    });
  });
});

describe('nullSpace', () => {
  it('is empty for a matrix of full rank', () => {
    expect(nullSpace(Float64Array.of(0, 2, 3, 0))).toEqual([]);
  });

  it('holds every direction that the matrix sends to 0', () => {
    // Rows 1 and 2 of 4 are alike, row 4 is the sum of rows 1 and 3: rank 2.
    const matrix = Float64Array.of(0, 1, 2, 3, 0, 1, 2, 3, 2, 0, 1, 1, 2, 1, 3, 4);
    const vectors = nullSpace(matrix);
    expect(vectors).toHaveLength(2);
    for (const vector of vectors) {
      for (let i = 0; i < 4; i++) {
        expect(dot(matrix.subarray(4 * i, 4 * i + 4), vector)).toBeCloseTo(0, 12);
      }
    }
    // Neither is a multiple of the other: each has a 1 where the other has a 0.
    expect(vectors.map((vector) => [vector[2], vector[3]])).toEqual([
      [1, 0],
      [0, 1],
    ]);
  });

  it('is the whole space for the zero matrix', () => {
    expect(nullSpace(new Float64Array(4))).toEqual([Float64Array.of(1, 0), Float64Array.of(0, 1)]);
  });
});
