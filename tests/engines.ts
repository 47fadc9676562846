import { findBrowser, wholeBrowser } from './browser/browser.ts';
import { lack } from './webkit/engine.ts';

/** Puts in whatever browsers the tests want and this machine lacks, as far as that can be done. */
export function findEngines(): void {
  findBrowser();
  wholeBrowser();
  lack();
}
