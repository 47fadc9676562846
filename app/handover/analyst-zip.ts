import { strToU8, zipSync } from 'fflate';
import { toCsv } from '../../core/exchange/csv.ts';
import { attendanceRows, dataPackage } from '../../core/exchange/data-package.ts';
import { tallyRows } from '../../core/exchange/tallies.ts';
import type { Summary } from '../../core/ledger/summary.ts';

/** The files of an export, by their names: the tables and what is told of them. */
export function analystFiles(
  practices: readonly Summary[],
  name: string,
  naming: Parameters<typeof tallyRows>[1],
): Record<string, string> {
  return {
    'datapackage.json': `${JSON.stringify(dataPackage(name), undefined, 2)}\n`,
    'tallies.csv': toCsv(tallyRows(practices, naming)),
    'attendance.csv': toCsv(attendanceRows(practices, naming.player)),
  };
}

/** The same as one file. */
export function analystZip(files: Readonly<Record<string, string>>, name: string): File {
  const packed = zipSync(
    Object.fromEntries(Object.entries(files).map(([path, text]) => [path, strToU8(text)])),
  );
  return new File([new Uint8Array(packed)], `${name}.zip`, { type: 'application/zip' });
}
