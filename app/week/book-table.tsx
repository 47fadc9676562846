// biome-ignore-all lint/a11y/noRedundantRoles: Safari drops a table's roles where it is laid out as a grid
import { type Explainable, Explained } from '../parts/explained.tsx';
import './book-table.css';

/** A column of numbers: what it is called, and what its numbers mean. */
export interface BookColumn {
  name: string;
  of: Explainable;
  /** Holds a number with its limits. */
  wide?: boolean;
}

/** A row of the book: a name and its numbers. */
export interface BookRow {
  id: string;
  name: string;
  /** One for each column after the name's; undefined where nothing is known. */
  numbers: (string | undefined)[];
}

/**
 * A table that fits a phone: there a name takes a line of its own with its numbers under it, each
 * with its column's name, so that long names and large text have room.
 */
export function BookTable({
  label,
  of,
  columns,
  rows,
}: {
  /** The id of the heading that names the table. */
  label: string;
  /** What the names are names of. */
  of: string;
  columns: BookColumn[];
  rows: BookRow[];
}) {
  return (
    <table class="book" role="table" aria-labelledby={label}>
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col">
            {of}
          </th>
          {columns.map(({ name }) => (
            <th key={name} role="columnheader" scope="col">
              {name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody role="rowgroup">
        {rows.map(({ id, name, numbers }) => (
          <tr key={id} role="row">
            <th role="rowheader" scope="row">
              {name}
            </th>
            {columns.map((column, place) => (
              <td key={column.name} role="cell" class={column.wide ? 'number book-wide' : 'number'}>
                <Explained of={column.of}>{numbers[place] ?? '—'}</Explained>
                <span class="book-column" aria-hidden="true">
                  {column.name}
                </span>
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
