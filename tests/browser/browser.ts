import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chromium } from 'playwright/test';
import { putIn } from '../debian.ts';

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

/** Debian's build of the same Chromium without windows, which runs the tests in a third of the time. */
const WITHOUT_WINDOWS = '/usr/lib/chromium/chromium-headless-shell';

/**
 * The browser that the tests run in, the first of: the environment variable CHROMIUM; Debian's
 * package `chromium-headless-shell`, put in as root; and a whole browser (see below).
 *
 * @throws Error saying what was tried
 */
export function findBrowser(): string {
  const named = process.env.CHROMIUM;
  if (named) {
    if (!existsSync(named)) throw new Error(`CHROMIUM names ${named}, which is not there`);
    return named;
  }
  const found = installed('chromium-headless-shell', WITHOUT_WINDOWS) ?? wholeBrowser();
  // Tests run in processes of their own, which need not look again.
  process.env.CHROMIUM = found;
  return found;
}

/**
 * A browser with settings and windows of its own, the first of: a Chromium or Chrome on the
 * machine; the test library's own; and what can be had now: as root on Debian the package
 * `chromium`, else the library's download.
 *
 * @throws Error saying what was tried
 */
export function wholeBrowser(): string {
  const found =
    USUAL_PLACES.find((path) => existsSync(path)) ??
    downloaded() ??
    installed('chromium', '/usr/bin/chromium') ??
    download();
  if (found) return found;
  throw new Error(
    'No Chromium or Chrome was found, and none could be downloaded or installed. Set CHROMIUM to the path of one.',
  );
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
  return downloaded();
}

function downloaded(): string | undefined {
  const path = chromium.executablePath();
  return existsSync(path) ? path : undefined;
}

/** What a Debian package brings, which is put in first where that can be done. */
function installed(name: string, path: string): string | undefined {
  if (!existsSync(path)) putIn([name]);
  return existsSync(path) ? path : undefined;
}

/** What Chromium needs to run as root in a closed network. */
export const BROWSER_ARGUMENTS = [
  '--no-sandbox',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
];
