import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Card, cardText, readCard } from '../../../core/exchange/card.ts';

const CARD: Card = {
  name: 'Pip',
  date: '2026-03-02',
  counted: 94,
  all: { touches: 210, low: 190, high: 232 },
  works: [
    { drill: 'mini-rally', rule: 'in-a-row', size: 10, sets: 4, usual: 3.5, best: 6 },
    { drill: 'own-1', name: 'Ladder', rule: 'on-target', size: 1, sets: 0 },
  ],
};

describe('a player’s card', () => {
  test('comes back as it was given, with what is not known left out', () => {
    expect(readCard(cardText(CARD))).toEqual(CARD);
    const { all: _, ...bare } = CARD;
    expect(readCard(cardText({ ...bare, works: [] }))).toEqual({ ...bare, works: [] });
  });

  test('of a newer version is told from what is no card', () => {
    expect(readCard(cardText(CARD).replace('[1,', '[2,'))).toBe('version');
    for (const text of ['', '{}', '[]', '[1]', 'null', '[1,"Pip","2026-13-02",0,null,[]]']) {
      expect(readCard(text)).toBeUndefined();
    }
  });

  test('with a name that hides something, or with a number beyond all bounds, is none', () => {
    expect(readCard(cardText({ ...CARD, name: 'Pip\u202e' }))).toBeUndefined();
    expect(readCard(cardText({ ...CARD, counted: 1e9 }))).toBeUndefined();
    expect(readCard(cardText({ ...CARD, counted: -1 }))).toBeUndefined();
  });

  test('is read from any text without an error', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        expect([undefined, 'version']).toContain(readCard(text));
      }),
    );
  });
});
