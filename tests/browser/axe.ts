import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, type Page } from './test.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What axe finds on the page as it stands, one line a finding. */
export async function findings(page: Page): Promise<string[]> {
  // It stays on the page until that is loaded anew.
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe);
  return page.evaluate(async (tags) => {
    interface Finding {
      id: string;
      nodes: { target: string[]; failureSummary: string }[];
    }
    const { axe } = window as unknown as {
      axe: { run: (where: Document, how: object) => Promise<{ violations: Finding[] }> };
    };
    const { violations } = await axe.run(document, {
      runOnly: { type: 'tag', values: tags },
      rules: { 'color-contrast-enhanced': { enabled: true } },
    });
    return violations.flatMap((found) =>
      found.nodes.map((node) => `${found.id} ${node.target.join(' ')}: ${node.failureSummary}`),
    );
  }, TAGS);
}

/** Expects that axe finds nothing, at the end of the page: there no control lies under the bar that stays in sight. */
export async function expectNothing(page: Page, where: string): Promise<void> {
  await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
  expect.soft(await findings(page), where).toEqual([]);
}
