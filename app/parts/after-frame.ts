/** Longer than a frame: where none comes, as on a page that is out of sight, the work is done all the same. */
const LONGEST_MS = 50;

const waiting: (() => void)[] = [];
let late: ReturnType<typeof setTimeout> | undefined;

/**
 * Does a work once what the page shows now is on the screen: a touch is seen first, and what it sets
 * off comes after it. Works are done in the order in which they were asked for, none is lost with
 * another that fails, and a page that is left does them at once.
 */
export function afterFrame(work: () => void): void {
  waiting.push(work);
  if (waiting.length > 1) return;
  requestAnimationFrame(() => setTimeout(workAll));
  late = setTimeout(workAll, LONGEST_MS);
}

function workAll(): void {
  clearTimeout(late);
  for (const work of waiting.splice(0)) {
    try {
      work();
    } catch (error) {
      reportError(error);
    }
  }
}

document.addEventListener('visibilitychange', workAll);
addEventListener('pagehide', workAll);
