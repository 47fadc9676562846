import type { Page } from 'playwright/test';

/** What is wider than the place it has, a line each. Only what is built to scroll may scroll. */
export const tooWide = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const wide: string[] = [];
    for (const element of document.querySelectorAll('html, body *')) {
      const { display, overflowX } = getComputedStyle(element);
      // A picture scales, hidden words are for ears, and a long name is cut where it says so.
      if (display === 'inline' || element.closest('svg, .unseen, .tile-name')) continue;
      if (overflowX === 'auto' || overflowX === 'scroll') continue;
      const { scrollWidth, clientWidth, tagName, className } = element;
      if (clientWidth > 0 && scrollWidth > clientWidth + 1) {
        const words = element.textContent?.trim().slice(0, 40);
        wide.push(`${tagName}.${className} "${words}": ${scrollWidth} in ${clientWidth}`);
      }
    }
    return wide;
  });
