import { type BackupFault, BackupReader, type Brought } from '../../core/exchange/backup-reader.ts';

/** Reads a text of entries that came at once. */
export function readEntries(text: string): Brought | BackupFault {
  const reader = new BackupReader();
  const lines = text.split('\n');
  if (lines.at(-1) === '') lines.pop();
  for (const line of lines) {
    const fault = reader.read(line);
    if (fault) return fault;
  }
  return reader.end();
}
