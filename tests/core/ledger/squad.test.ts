import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foldSquad, LONGEST_NAME, nameFault, PlayerName } from '../../../core/ledger/squad.ts';
import { teller } from '../told.ts';

describe('a name', () => {
  test.each([
    'Lin',
    "O'Neil",
    'Zoé',
    '李娜',
    'مريم',
    'शिव',
    '4',
    '🎾',
    '👩‍👧‍👦',
    '🏴󠁧󠁢󠁥󠁮󠁧󠁿',
    'نیک‌پی',
    'a'.repeat(LONGEST_NAME),
  ])('may be %s', (name) => {
    expect(nameFault(name)).toBeUndefined();
    expect(PlayerName.parse(name)).toBe(name);
  });

  test.each([
    '<b>Lin</b>',
    '<script>alert(1)</script>',
    '&amp;',
    '"><img src=x onerror=a()>',
    '{{x}} %s',
  ])('is just text where it looks like markup: %s', (name) => {
    expect(nameFault(name)).toBeUndefined();
    expect(PlayerName.parse(name)).toBe(name);
  });

  test('loses the spaces round it, and those inside stay', () => {
    expect(PlayerName.parse('  Anna  Lena ')).toBe('Anna  Lena');
  });

  test.each(['', ' ', '\t\n', '\u00a0'])('is not %j', (name) => {
    expect(nameFault(name)).toBe('empty');
  });

  test.each([
    ['a joiner alone', '\u200d'],
    ['a Hangul filler', '\u3164'],
    ['an empty Braille cell', '\u2800'],
    ['a variation selector alone', '\ufe0f'],
  ])('is not empty to the eye: %s', (_, name) => {
    expect(nameFault(name)).toBe('empty');
    expect(PlayerName.safeParse(name).success).toBe(false);
  });

  test('of more than forty characters is too long, ten thousand too', () => {
    for (const length of [LONGEST_NAME + 1, 10_000]) {
      expect(nameFault('a'.repeat(length))).toBe('long');
      expect(PlayerName.safeParse('a'.repeat(length)).success).toBe(false);
    }
  });

  test.each([
    ['a right-to-left override', '\u202e'],
    ['a left-to-right embedding', '\u202a'],
    ['an isolate', '\u2066'],
    ['the end of an isolate', '\u2069'],
    ['a right-to-left mark', '\u200f'],
    ['an Arabic letter mark', '\u061c'],
    ['a zero-width space', '\u200b'],
    ['a byte order mark', '\ufeff'],
    ['a soft hyphen', '\u00ad'],
    ['a NUL', '\0'],
    ['a line end', '\n'],
    ['a line separator', '\u2028'],
    ['half a character', '\ud83c'],
  ])('with %s inside is refused', (_, hidden) => {
    expect(nameFault(`Li${hidden}n`)).toBe('hidden');
    expect(PlayerName.safeParse(`Li${hidden}n`).success).toBe(false);
  });

  test('that another player has is taken, whatever its case, width and spaces', () => {
    expect(nameFault('LIN ', ['Otto', 'lin'])).toBe('taken');
    expect(nameFault('Ｌｉｎ', ['lin'])).toBe('taken');
    expect(nameFault('Zoe\u0301', ['Zoé'])).toBe('taken');
    expect(nameFault('Lina', ['Lin'])).toBeUndefined();
  });

  test('is refused by the form exactly where the ledger would refuse it', () => {
    const unit = fc.constantFrom(
      ...'a ',
      '\u202e',
      '\u200d',
      '\ufeff',
      '\u3164',
      '\ud800',
      '😀',
      '\n',
    );
    fc.assert(
      fc.property(fc.string({ unit, maxLength: 45 }), (name) => {
        expect(PlayerName.safeParse(name).success).toBe(nameFault(name) === undefined);
      }),
    );
  });
});

describe('the squad', () => {
  const fold = (...sayings: Parameters<ReturnType<typeof teller>>[0][]) => {
    const tell = teller();
    return [...foldSquad(sayings.map((saying) => tell(saying))).values()];
  };
  const lin = { kind: 'player-added', player: 'p1', name: 'Lin' } as const;
  const otto = {
    kind: 'player-added',
    player: 'p2',
    name: 'Otto',
    level: 4,
    hand: 'left',
  } as const;

  test('without entries is nobody', () => {
    expect(fold()).toEqual([]);
  });

  test('has its players in the order in which they were added, with what is known of them', () => {
    expect(fold(otto, lin)).toEqual([
      { id: 'p2', name: 'Otto', level: 4, hand: 'left', resting: false },
      { id: 'p1', name: 'Lin', resting: false },
    ]);
  });

  test('takes the same player once', () => {
    expect(fold(lin, { ...lin, name: 'Another' })).toEqual([
      { id: 'p1', name: 'Lin', resting: false },
    ]);
  });

  test('changes only what is said, and keeps the place', () => {
    expect(fold(otto, lin, { kind: 'player-changed', player: 'p2', name: 'Oto' })).toEqual([
      { id: 'p2', name: 'Oto', level: 4, hand: 'left', resting: false },
      { id: 'p1', name: 'Lin', resting: false },
    ]);
  });

  test('leaves a level or a hand open again, and what is not named as it is', () => {
    const cleared = (...facts: string[]) =>
      fold(otto, { kind: 'player-changed', player: 'p2', name: 'Oto', cleared: facts });
    expect(cleared('level')).toEqual([{ id: 'p2', name: 'Oto', hand: 'left', resting: false }]);
    expect(cleared('hand')).toEqual([{ id: 'p2', name: 'Oto', level: 4, resting: false }]);
    expect(cleared('level', 'hand')).toEqual([{ id: 'p2', name: 'Oto', resting: false }]);
    // What only a later version can clear, and what a player is never without.
    expect(cleared('wish', 'name', 'id')).toEqual([
      { id: 'p2', name: 'Oto', level: 4, hand: 'left', resting: false },
    ]);
  });

  test('takes a level given after it was cleared', () => {
    const changed = { kind: 'player-changed', player: 'p2' } as const;
    expect(fold(otto, { ...changed, cleared: ['level'] }, { ...changed, level: 6 })[0]?.level).toBe(
      6,
    );
  });

  test('lets a player rest and return', () => {
    const rested = [lin, { kind: 'player-rested', player: 'p1' }] as const;
    expect(fold(...rested)[0]?.resting).toBe(true);
    expect(fold(...rested, { kind: 'player-returned', player: 'p1' })[0]?.resting).toBe(false);
  });

  test('passes over what is said of one who was never added', () => {
    expect(
      fold(
        { kind: 'player-changed', player: 'p9', name: 'Ghost' },
        { kind: 'player-rested', player: 'p9' },
        { kind: 'player-returned', player: 'p9' },
      ),
    ).toEqual([]);
  });
});
