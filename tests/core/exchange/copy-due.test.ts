import { expect, test } from 'vitest';
import { copyDue } from '../../../core/exchange/copy-due.ts';

test.each([
  ['no practice was held', [], undefined, false],
  ['the first one is a week ago', ['2026-03-02'], undefined, false],
  ['it is more than a week ago', ['2026-03-01'], undefined, true],
  ['a copy was made after it', ['2026-03-01'], '2026-03-02', false],
  ['a copy was made on its day', ['2026-03-01'], '2026-03-01', false],
  ['an old copy lacks it', ['2026-02-01', '2026-03-01'], '2026-02-02', true],
  ['only this week is in no copy', ['2026-02-01', '2026-03-05'], '2026-02-02', false],
] as const)('a copy is asked for or not, where %s', (_, practices, copied, due) => {
  expect(copyDue(practices, copied, '2026-03-09')).toBe(due);
});
