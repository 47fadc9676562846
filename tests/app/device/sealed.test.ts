import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { isSealed, seal, unseal } from '../../../app/device/sealed.ts';
import { putIn } from '../../debian.ts';

const TEXT = '{"rally-ledger":1}\n{"entries":0}\n';
const WORDS = 'pip juno odile';
const file = () => new File([TEXT], 'rally-ledger-backup-2026-03-02.txt', { type: 'text/plain' });

const sealed = await seal(file(), WORDS);
const bytes = new Uint8Array(await sealed.arrayBuffer());

/** Debian's own tool for the format; left out where it cannot be had, as without a network. */
const hasAge = () => spawnSync('age', ['--version']).status === 0;
const age = hasAge() || (putIn(['age']) && hasAge());

describe('a sealed copy', () => {
  test('is text with a name that share sheets take, and is known for what it is', async () => {
    expect(sealed.name).toBe('rally-ledger-backup-2026-03-02.age.txt');
    expect(sealed.type).toBe('text/plain');
    expect(await isSealed(sealed)).toBe(true);
    expect(await isSealed(file())).toBe(false);
    expect(new TextDecoder().decode(bytes)).not.toContain('rally-ledger');
  });

  test('is opened by its passphrase', async () => {
    expect(await ((await unseal(sealed, WORDS)) as Blob).text()).toBe(TEXT);
  });

  test('stays shut to another passphrase', async () => {
    expect(await unseal(sealed, 'pip juno')).toBe('passphrase');
  });

  test('that was cut, anywhere, or has a byte flipped, stays shut and says so', async () => {
    for (const length of [30, 100, 250, bytes.length - 60, bytes.length - 40]) {
      expect(['damaged', 'passphrase']).toContain(
        await unseal(new Blob([bytes.slice(0, length)]), WORDS),
      );
    }
    for (const at of [60, 150, 260, bytes.length - 50]) {
      const flipped = bytes.slice();
      flipped[at] = (flipped[at] ?? 0) ^ 1;
      expect(['damaged', 'passphrase', 'key', 'slow']).toContain(
        await unseal(new Blob([flipped]), WORDS),
      );
    }
  });

  test('that would hold a phone for minutes is not tried', async () => {
    const head = `age-encryption.org/v1\n-> scrypt ${'A'.repeat(22)} 30\n${'A'.repeat(43)}\n--- `;
    expect(await unseal(new Blob([head]), WORDS)).toBe('slow');
  });

  test('that a key opens, and no passphrase, is told from one that is damaged', async () => {
    const head = `age-encryption.org/v1\n-> X25519 ${'A'.repeat(43)}\n${'A'.repeat(43)}\n--- `;
    expect(await unseal(new Blob([head]), WORDS)).toBe('key');
  });
});

describe.runIf(age)('Debian’s age', () => {
  const folder = mkdtempSync(join(tmpdir(), 'rally-ledger-age-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const at = (name: string) => join(folder, name);

  /** It asks for the passphrase on a terminal, which `script` (of every Debian) stands in for. */
  const ask = (command: string, answers: string) =>
    execFileSync('script', ['-qefc', command, '/dev/null'], { input: answers, stdio: 'pipe' });

  test('opens a copy that the app sealed', () => {
    writeFileSync(at('ours.age'), bytes);
    ask(`age -d -o ${at('ours.txt')} ${at('ours.age')}`, `${WORDS}\n`);
    expect(readFileSync(at('ours.txt'), 'utf8')).toBe(TEXT);
  });

  test('seals a file that the app opens, plain and as text', async () => {
    writeFileSync(at('theirs.txt'), TEXT);
    for (const [name, option] of [
      ['binary', ''],
      ['armour', '-a'],
    ] as const) {
      ask(`age -p ${option} -o ${at(name)} ${at('theirs.txt')}`, `${WORDS}\n${WORDS}\n`);
      const opened = await unseal(new Blob([readFileSync(at(name))]), WORDS);
      expect(await (opened as Blob).text()).toBe(TEXT);
    }
  });
});
