import { expect, test } from 'vitest';
import { failuresIn } from './failures.ts';

/* The forms of the reports are those that Vitest 4 and Playwright 1.65 write. */

test('the tests that failed are named with the first lines of what was wrong, whichever runner tells', () => {
  const long = Array.from({ length: 40 }, (_, line) => `line ${line}`).join('\n');
  expect(
    failuresIn({
      testResults: [
        { name: 'a.test.ts', status: 'failed', message: 'no such module', assertionResults: [] },
        {
          name: 'b.test.ts',
          status: 'failed',
          message: '',
          assertionResults: [
            { status: 'passed', fullName: 'holds', failureMessages: [] },
            { status: 'failed', fullName: 'breaks', failureMessages: [long] },
          ],
        },
      ],
    }),
  ).toEqual([
    'a.test.ts › the file itself\n  no such module',
    `b.test.ts › breaks\n  ${long.split('\n').slice(0, 12).join('\n  ')}`,
  ]);
  const spec = (title: string, ok: boolean, message?: string) => ({
    title,
    ok,
    file: 'c.test.ts',
    tests: [{ results: [{ ...(message && { error: { message } }) }] }],
  });
  expect(
    failuresIn({
      suites: [
        {
          specs: [spec('holds', true)],
          suites: [{ specs: [spec('breaks', false, '\u001b[31mred\u001b[39m')] }],
        },
      ],
    }),
  ).toEqual(['c.test.ts › breaks\n  red']);
});

test('a run in which nothing failed names nothing', () => {
  expect(failuresIn({ testResults: [], suites: [] })).toEqual([]);
  expect(failuresIn({})).toEqual([]);
});
