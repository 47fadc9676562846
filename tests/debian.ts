import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const ENV = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
const apt = (...options: string[]) =>
  execFileSync('apt-get', ['-qq', ...options], { stdio: 'ignore', env: ENV });

let listed = false;

/**
 * Puts packages in where that can be done: as root on Debian. Without a network, or where this
 * release has no such package, nothing happens.
 *
 * @param options of `apt-get install`
 * @returns whether they are in now
 */
export function putIn(packages: readonly string[], ...options: string[]): boolean {
  if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return false;
  try {
    if (!listed) apt('update');
    listed = true;
    apt('install', '-y', ...options, ...packages);
  } catch {
    return false;
  }
  return true;
}
