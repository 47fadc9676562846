import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdirSync, mkdtempSync, openSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Readable } from 'node:stream';
import { fileURLToPath } from 'node:url';
import type { TestProject } from 'vitest/node';
import { putIn } from '../debian.ts';

/*
 * WebKit for the tests: Debian's build of it with its own WebDriver, on a screen in memory. Where
 * it is not there and cannot be installed the tests are left out, and say so.
 */

export interface Engine {
  /** The address of the WebDriver. */
  driver: string;
  /** The folder that downloads go to. */
  downloads: string;
}

declare module 'vitest' {
  interface ProvidedContext {
    engine: Engine | undefined;
  }
}

/** What tests leave to look at: pictures, and what the engine said. */
const CACHE = fileURLToPath(new URL('../../.cache/webkit/', import.meta.url));
const DRIVER = '/usr/bin/WebKitWebDriver';
const SCREEN = '/usr/bin/Xvfb';
const isThere = () => existsSync(DRIVER) && existsSync(SCREEN);

export default async function setup(project: TestProject): Promise<(() => Promise<void>) | void> {
  const lacking = lack();
  if (lacking !== undefined) {
    console.log(`WebKit is left out: ${lacking}`);
    project.provide('engine', undefined);
    return;
  }
  rmSync(CACHE, { recursive: true, force: true });
  mkdirSync(CACHE, { recursive: true });
  const home = mkdtempSync(join(tmpdir(), 'webkit-'));
  const downloads = join(home, 'downloads');
  mkdirSync(downloads);
  writeFileSync(join(home, 'user-dirs.dirs'), `XDG_DOWNLOAD_DIR="${downloads}"\n`);

  const log = openSync(join(CACHE, 'engine.log'), 'a');
  const { screen, display } = await startScreen();
  const port = await freePort();
  const driver = spawn(DRIVER, [`--port=${port}`], {
    // A process group of its own, so that the browser and its helpers end with it.
    detached: true,
    stdio: ['ignore', log, log],
    env: {
      ...process.env,
      DISPLAY: display,
      HOME: home,
      XDG_CONFIG_HOME: home,
      LC_ALL: 'en_GB.UTF-8',
      TZ: noon(),
      // The screen is the one named above, whatever desktop the tests are run from.
      GDK_BACKEND: 'x11',
    },
  });
  const end = () => {
    if (isRunning(driver) && driver.pid) process.kill(-driver.pid);
    screen.kill();
  };
  const clear = () =>
    rmSync(home, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  process.once('exit', () => {
    end();
    clear();
  });

  const address = `http://127.0.0.1:${port}`;
  await answers(address);
  project.provide('engine', { driver: address, downloads });
  return async () => {
    const ended = [driver, screen].filter(isRunning).map((child) => once(child, 'exit'));
    end();
    await Promise.all(ended);
    clear();
  };
}

const isRunning = (child: ChildProcess) => child.exitCode === null && child.signalCode === null;

/** Why there is no WebKit here; undefined where there is. As root on Debian it is installed first. */
export function lack(): string | undefined {
  if (isThere()) return undefined;
  if (!existsSync('/etc/debian_version')) return 'these tests run on Debian only';
  if (process.getuid?.() !== 0) {
    return 'install webkit2gtk-driver and xvfb, or run the tests as root';
  }
  const packages = ['webkit2gtk-driver', 'xvfb'];
  putIn(packages, '--no-install-recommends');
  return isThere() ? undefined : `the packages ${packages.join(' and ')} could not be installed`;
}

/**
 * A screen in memory, at the first number that is free.
 *
 * @throws Error where it does not start
 */
async function startScreen(): Promise<{ screen: ChildProcess; display: string }> {
  const options = ['-displayfd', '3', '-screen', '0', '1280x1024x24', '-nolisten', 'tcp'];
  const screen = spawn(SCREEN, options, { stdio: ['ignore', 'ignore', 'ignore', 'pipe'] });
  const number = once(screen.stdio[3] as Readable, 'data');
  const ended = once(screen, 'exit').then(() => {
    throw new Error('Xvfb did not start');
  });
  return { screen, display: `:${String(await Promise.race([number, ended])).trim()}` };
}

async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const address = server.address();
  server.close();
  return typeof address === 'object' && address ? address.port : 0;
}

/** @throws Error where the driver says nothing within 20 seconds */
async function answers(address: string): Promise<void> {
  for (let tries = 100; tries > 0; tries--) {
    try {
      if ((await fetch(`${address}/status`)).ok) return;
    } catch {
      // It is still starting.
    }
    await new Promise((resolve) => setTimeout(resolve, 200));
  }
  throw new Error('WebKitWebDriver did not answer');
}

/** A time zone in which it is about noon now: no practice of the tests runs over midnight. */
function noon(): string {
  const ahead = 12 - new Date().getUTCHours();
  // In these names a place ahead of UTC has a minus.
  return `Etc/GMT${ahead > 0 ? '-' : '+'}${Math.abs(ahead)}`;
}
