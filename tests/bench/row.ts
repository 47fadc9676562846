/** One figure of the table, and what is wanted of it. */
export interface Row {
  figure: string;
  measured: number;
  /** What the same run gave for what it is measured against; without it the figure itself is held against the goal. */
  reference?: { name: string; measured: number };
  unit: 'ms' | 'kB' | 'MB' | '';
  /** The most that is wanted: of the ratio where there is a reference, else of the figure. */
  most: number;
}

/** The figure over its reference, or the figure itself. */
export const ratioOf = ({ measured, reference }: Row): number =>
  reference ? measured / reference.measured : measured;

export const holds = (row: Row): boolean => ratioOf(row) <= row.most;

const told = (value: number, unit: string): string =>
  `${value.toFixed(unit === '' || value >= 100 ? 0 : value >= 10 ? 1 : 2)}${unit && ` ${unit}`}`;

/** The table as lines of Markdown. */
export function tableOf(rows: readonly Row[]): string[] {
  const cells = rows.map((row) => [
    row.figure,
    told(row.measured, row.unit),
    row.reference ? `${row.reference.name}: ${told(row.reference.measured, row.unit)}` : '',
    row.reference ? ratioOf(row).toFixed(2) : '',
    row.reference ? `at most ${row.most}` : `at most ${told(row.most, row.unit)}`,
    holds(row) ? 'holds' : 'MISSED',
  ]);
  const heads = ['figure', 'measured', 'reference', 'ratio', 'goal', ''];
  const widths = heads.map((head, i) =>
    Math.max(head.length, ...cells.map((row) => row[i]!.length)),
  );
  const line = (row: readonly string[]) =>
    `| ${row.map((cell, i) => cell.padEnd(widths[i] ?? 0)).join(' | ')} |`;
  return [line(heads), line(widths.map((width) => '-'.repeat(width))), ...cells.map(line)];
}
