import type { Reporter, TestCase, TestResult } from 'playwright/types/testReporter';

/** Prints what the tests counted: what was broken on purpose, how often, and what came of it. */
export default class Table implements Reporter {
  readonly #rows: [title: string, what: string, count: string][] = [];

  onTestEnd(test: TestCase, result: TestResult): void {
    for (const { type, description } of result.annotations) {
      const [what = '', count = ''] = description?.split('\t') ?? [];
      if (type === 'count') this.#rows.push([test.title, what, count]);
    }
  }

  onEnd(): void {
    const width = Math.max(0, ...this.#rows.map(([, what]) => what.length));
    let last = '';
    for (const [title, what, count] of this.#rows) {
      if (title !== last) console.log(`\n${title}`);
      last = title;
      console.log(`  ${what.padEnd(width)}  ${count.padStart(8)}`);
    }
    console.log('');
  }
}
