import { stripVTControlCharacters } from 'node:util';

/** What Vitest writes of a file; one that could not be read has no tests, and says so itself. */
interface File {
  name: string;
  status: string;
  message: string;
  assertionResults: { status: string; fullName: string; failureMessages: string[] }[];
}

/** What Playwright writes: suites lie in suites, and a test has a result for each time it was run. */
interface Suite {
  specs?: {
    ok: boolean;
    file: string;
    title: string;
    tests: { results: { error?: { message?: string } }[] }[];
  }[];
  suites?: Suite[];
}

/** So much of what a failure says of itself. */
const FIRST_LINES = 12;

/**
 * The tests that failed, each with its file and the first lines of what was wrong.
 *
 * @param report what Vitest or Playwright writes as JSON
 */
export const failuresIn = ({
  testResults = [],
  suites = [],
}: {
  testResults?: File[];
  suites?: Suite[];
}): string[] => [...testResults.flatMap(inFile), ...suites.flatMap(inSuite)];

const inFile = ({ name, status, message, assertionResults }: File): string[] =>
  assertionResults.length === 0 && status === 'failed'
    ? [told(name, 'the file itself', message)]
    : assertionResults
        .filter((test) => test.status === 'failed')
        .map((test) => told(name, test.fullName, test.failureMessages[0]));

const inSuite = ({ specs = [], suites = [] }: Suite): string[] => [
  ...specs
    .filter(({ ok }) => !ok)
    .map(({ file, title, tests }) => {
      const results = tests.flatMap((test) => test.results);
      return told(file, title, results.at(-1)?.error?.message);
    }),
  ...suites.flatMap(inSuite),
];

const told = (file: string, title: string, message = ''): string =>
  [
    `${file} › ${title}`,
    ...stripVTControlCharacters(message).split('\n').slice(0, FIRST_LINES),
  ].join('\n  ');
