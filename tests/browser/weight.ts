import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { DIST } from '../faults/served.ts';

const packed = (file: string): number => gzipSync(readFileSync(join(DIST, file))).length;

/** The scripts that the page asks for before a person does anything: its own and all they import. */
export function firstScripts(): Set<string> {
  const page = readFileSync(join(DIST, 'index.html'), 'utf8');
  const waiting = [...page.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.js)"/g)].map(
    (m) => m[1] ?? '',
  );
  const found = new Set<string>();
  for (let script = waiting.pop(); script !== undefined; script = waiting.pop()) {
    if (found.has(script)) continue;
    found.add(script);
    const text = readFileSync(join(DIST, script), 'utf8');
    for (const [, name] of text.matchAll(/(?:from|import)\s*["']\.\/([^"']+\.js)["']/g)) {
      waiting.push(`assets/${name}`);
    }
  }
  return found;
}

/** Bytes of those scripts, each packed by itself. */
export const firstLoadBytes = (): number =>
  [...firstScripts()].reduce((sum, script) => sum + packed(script), 0);

/** Bytes of all that the service worker keeps, each file packed by itself. */
export function wholeBytes(): number {
  const worker = readFileSync(join(DIST, 'sw.js'), 'utf8');
  const kept = readdirSync(DIST, { recursive: true, encoding: 'utf8' }).filter(
    (file) => /\.\w+$/.test(file) && worker.includes(`"${file}"`),
  );
  if (kept.length === 0) throw new Error('the service worker names no file');
  return kept.reduce((sum, file) => sum + packed(file), 0);
}
