import { describe, expect, test } from 'vitest';
import { whatIsDue } from '../../../core/planning/what-is-due.ts';
import { lobTerms, practiceWith, roundWith, termsWith } from '../made.ts';

const history = [
  practiceWith('2026-03-16', [roundWith(0, termsWith(), [[['a', 'b'], 1]])]),
  practiceWith('2026-03-06', [
    roundWith(0, lobTerms, [[['a', 'b'], 1]]),
    roundWith(1, termsWith(), [[['a', 'b'], 1]]),
  ]),
];
const TODAY = '2026-03-20';

describe('what is due', () => {
  test('of no history is everything, and nothing was played last', () => {
    const due = whatIsDue([], TODAY, ['a']);
    expect(due.overdue('volleys')).toBe(1);
    expect(due.overdue('volley')).toBe(1);
    expect(due.drillDays('rally')).toBeUndefined();
    expect(due.drillOverdue('rally')).toBe(1);
    expect(due.lastDrills.size).toBe(0);
    expect(due.practicesSince('volleys')).toBe(Number.POSITIVE_INFINITY);
  });

  test('goes up by the day to four weeks, the mean of those who are here', () => {
    const due = whatIsDue(history, TODAY, ['a', 'b']);
    expect(due.overdue('groundstrokes')).toBe(4 / 28);
    expect(due.overdue('lob')).toBe((14 / 28 + 1) / 2);
    expect(due.overdue('volleys')).toBe(1);
    expect(whatIsDue(history, '2027-01-01', ['a']).overdue('groundstrokes')).toBe(1);
    expect(whatIsDue(history, '2026-03-16', ['a']).overdue('groundstrokes')).toBe(0);
  });

  test('takes one who is new for overdue in everything', () => {
    expect(whatIsDue(history, TODAY, ['a', 'new']).overdue('groundstrokes')).toBe((4 / 28 + 1) / 2);
  });

  test('of one player is by the own days, whether here or not', () => {
    const due = whatIsDue(history, TODAY, ['a']);
    expect(due.overdueFor('a', 'lob')).toBe(14 / 28);
    expect(due.overdueFor('b', 'lob')).toBe(1);
    expect(due.overdueFor('b', 'overheads-and-lobs')).toBe(14 / 28);
    expect(due.overdueFor('new', 'groundstrokes')).toBe(1);
  });

  test("is the squad's own while nobody is here", () => {
    expect(whatIsDue(history, TODAY, []).overdue('lob')).toBe(14 / 28);
    expect(whatIsDue(history, TODAY, []).here).toEqual([]);
  });

  test('of a drill goes by when it was last played', () => {
    const due = whatIsDue(history, TODAY, []);
    expect(due.drillDays('lob')).toBe(14);
    expect(due.drillOverdue('lob')).toBe(14 / 28);
    expect(due.drillDays('rally')).toBe(4);
  });

  test('knows the drills of the last day, and how many practices ago a family was', () => {
    const due = whatIsDue(history, TODAY, []);
    expect(due.lastDrills).toEqual(new Set(['rally']));
    expect(due.practicesSince('groundstrokes')).toBe(1);
    expect(due.practicesSince('overheads-and-lobs')).toBe(2);
    const second = practiceWith('2026-03-16', [roundWith(0, lobTerms, [[['a', 'b'], 1]])], 'two');
    expect(whatIsDue([...history, second], TODAY, []).lastDrills).toEqual(
      new Set(['rally', 'lob']),
    );
  });

  test('is the same for practices in any order, and passes over what is later', () => {
    const early = whatIsDue(history.toReversed(), '2026-03-10', ['a']);
    expect(early.lastDrills).toEqual(new Set(['rally', 'lob']));
    expect(early.overdue('lob')).toBe(4 / 28);
  });
});
