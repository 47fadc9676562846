// biome-ignore-all lint/a11y/noRedundantRoles: Safari drops a table's roles where it is laid out as a grid
import './book-table.css';

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
  columns: string[];
  rows: BookRow[];
}) {
  return (
    <table class="book" role="table" aria-labelledby={label}>
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col">
            {of}
          </th>
          {columns.map((column) => (
            <th key={column} role="columnheader" scope="col">
              {column}
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
            {numbers.map((number, column) => (
              <td key={columns[column]} role="cell" class="number">
                {number ?? '—'}
                <span class="book-column" aria-hidden="true">
                  {columns[column]}
                </span>
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
