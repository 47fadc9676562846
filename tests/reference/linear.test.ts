import { describe, it } from 'vitest';
import { cholesky, dot, solve } from '../../core/figures/linear.ts';
import { agree, type Check, check, named } from './values.ts';

/**
 * Least squares of y on the columns, by the linear algebra under the model of levels. The columns are
 * centred and scaled first: as they stand, Longley's would leave the normal equations no digit.
 */
function leastSquares(y: readonly number[], columns: readonly (readonly number[])[]) {
  const n = y.length;
  const meanOf = (values: readonly number[]) => values.reduce((sum, v) => sum + v, 0) / n;
  const means = columns.map(meanOf);
  const centred = columns.map((column, j) => column.map((x) => x - means[j]!));
  const scales = centred.map((column) => Math.sqrt(dot(column, column)));
  const scaled = centred.map((column, j) => column.map((x) => x / scales[j]!));
  const rest = y.map((value) => value - meanOf(y));
  const width = columns.length;
  const gram = new Float64Array(width * width);
  scaled.forEach((a, i) => {
    scaled.forEach((b, j) => {
      gram[i * width + j] = dot(a, b);
    });
  });
  const lower = cholesky(gram)!;
  const onScaled = solve(
    lower,
    scaled.map((column) => dot(column, rest)),
  );
  const slopes = Array.from(onScaled, (b, j) => b / scales[j]!);
  const residuals = rest.map(
    (value, i) => value - slopes.reduce((sum, b, j) => sum + b * centred[j]![i]!, 0),
  );
  const squares = dot(residuals, residuals);
  const sd = Math.sqrt(squares / (n - width - 1));
  const covariance = columns.flatMap((_, i) => [
    ...solve(
      lower,
      columns.map((_, j) => Number(i === j)),
    ),
  ]);
  const atMeans = means.map((mean, j) => mean / scales[j]!);
  const spread = atMeans.reduce(
    (sum, a, i) => sum + atMeans.reduce((own, b, j) => own + a * b * covariance[i * width + j]!, 0),
    0,
  );
  return {
    B: [meanOf(y) - slopes.reduce((sum, b, j) => sum + b * means[j]!, 0), ...slopes],
    se: [
      sd * Math.sqrt(1 / n + spread),
      ...slopes.map((_, j) => (sd * Math.sqrt(covariance[j * width + j]!)) / scales[j]!),
    ],
    sd,
    rSquared: 1 - squares / dot(rest, rest),
  };
}

describe('least squares', () => {
  it(named(check('E.nist.norris')), () => {
    const { inputs, expected } = check('E.nist.norris');
    const { B, se, sd, rSquared } = leastSquares(inputs.y, [inputs.x]);
    agree(B[0], expected.B0, 1e-9, 'B0');
    agree(B[1], expected.B1, 1e-12, 'B1');
    agree(se[0], expected.se_B0, 1e-10, 'se of B0');
    agree(se[1], expected.se_B1, 1e-10, 'se of B1');
    agreeAsAWhole(check('E.nist.norris'), sd, rSquared);
  });

  it(named(check('E.nist.longley')), () => {
    const { inputs, expected } = check('E.nist.longley');
    const rows: number[][] = inputs.rows_y_x1_to_x6;
    const column = (j: number) => rows.map((row) => row[j]!);
    const { B, se, sd, rSquared } = leastSquares(column(0), [1, 2, 3, 4, 5, 6].map(column));
    B.forEach((b, j) => {
      agree(b, expected.B[j], 1e-8, `B${j}`);
      agree(se[j], expected.se_B[j], 1e-8, `se of B${j}`);
    });
    agreeAsAWhole(check('E.nist.longley'), sd, rSquared);
  });
});

function agreeAsAWhole({ expected }: Check, sd: number, rSquared: number): void {
  agree(sd, expected.resid_sd, 1e-10, 'residual sd');
  agree(rSquared, expected.r_squared, 1e-12, 'r²');
}
