import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chromium } from 'playwright/test';

/** Where a Chromium or Chrome is installed on the systems people work on. */
const USUAL_PLACES = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/**
 * The browser that the tests run in, the first of: the environment variable CHROMIUM, one on the
 * machine, the test library's own download, and as root on Debian the package `chromium`.
 *
 * @throws Error saying what was tried
 */
export function findBrowser(): string {
  const named = process.env.CHROMIUM;
  if (named) {
    if (!existsSync(named)) throw new Error(`CHROMIUM names ${named}, which is not there`);
    return named;
  }
  const found = [...USUAL_PLACES, chromium.executablePath()].find((path) => existsSync(path));
  return found ?? download() ?? installPackage() ?? giveUp();
}

function download(): string | undefined {
  try {
    execFileSync('npx', ['playwright', 'install', 'chromium'], {
      stdio: 'ignore',
      timeout: 300_000,
    });
  } catch {
    return undefined; // No network, or no build for this system.
  }
  const path = chromium.executablePath();
  return existsSync(path) ? path : undefined;
}

function installPackage(): string | undefined {
  if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return undefined;
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  execFileSync('apt-get', ['update', '-qq'], { stdio: 'ignore', env });
  execFileSync('apt-get', ['install', '-y', '-qq', 'chromium'], { stdio: 'ignore', env });
  return existsSync('/usr/bin/chromium') ? '/usr/bin/chromium' : undefined;
}

function giveUp(): never {
  throw new Error(
    'No Chromium or Chrome was found, and none could be downloaded or installed. Set CHROMIUM to the path of one.',
  );
}

/** What Chromium needs to run as root in a closed network. */
export const BROWSER_ARGUMENTS = [
  '--no-sandbox',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
];
