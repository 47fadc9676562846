import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { card as cardEn } from '../../app/words/card.en.ts';
import { desk as deskEn } from '../../app/words/desk.en.ts';
import { en } from '../../app/words/en.ts';
import { figures as figuresEn } from '../../app/words/figures.en.ts';
import { handover as handoverEn } from '../../app/words/handover.en.ts';
import { inSpain, saidBy } from '../../app/words/in-spain.ts';
import { languages, type Spoken, spoken, spokenOf } from '../../app/words/languages.ts';
import { localeOf } from '../../app/words/locale.ts';
import { look as lookEn } from '../../app/words/look.en.ts';
import { planning as planningEn } from '../../app/words/planning.en.ts';
import { quality as qualityEn } from '../../app/words/quality.en.ts';
import { type Roots, readIn, textsOf, unread } from './text-uses.ts';

const english = {
  words: en,
  figures: figuresEn,
  planning: planningEn,
  desk: deskEn,
  card: cardEn,
  handover: handoverEn,
  quality: qualityEn,
  look: lookEn,
};
type Whole = typeof english;
type Other = Exclude<Spoken, 'en'>;
const others = Object.fromEntries(
  await Promise.all(
    spoken
      .filter((code) => code !== 'en')
      .map(async (code) => [code, await languages[code].load()] as const),
  ),
) as Record<Other, Whole>;
const fr = others.fr.words;

/** What a language has at a place, and how many arguments it takes. */
const textAt = (whole: Whole, path: string): unknown =>
  path.split('.').reduce<unknown>((value, key) => (value as Record<string, unknown>)[key], whole);

const shapeOf = (whole: Whole): string[] =>
  textsOf(whole)
    .map((path) => {
      const text = textAt(whole, path);
      if (typeof text === 'function') return `${path} of ${text.length}`;
      return Array.isArray(text) ? `${path}, ${text.length} lines` : `${path}: ${typeof text}`;
    })
    .sort();

/** A text as it is written; of one that is put together, its code. */
const written = (text: unknown): string =>
  typeof text === 'function'
    ? text
        .toString()
        .replace(/[ \n]+/g, ' ')
        // What the test's own compiler calls an import.
        .replace(/__vite_ssr_import_\d+__/g, 'file')
    : JSON.stringify(text);

/** Formats: the words come from Intl, from other texts, or there are none. */
const FORMATS = [
  'words.direction',
  'words.number',
  'words.decimal',
  'words.lengths.metres',
  'words.hundredths',
  'words.date',
  'words.list',
  'words.clock',
  'words.court.more',
  'words.court.takeBack',
  'card.role',
  'desk.week.day',
  'desk.week.span',
  'desk.week.inMinutes',
  'desk.settings.version',
  'look.percent',
  'look.season.month',
  'look.season.balls',
  'figures.number',
  'figures.rounded',
  'figures.rate',
  'figures.percent',
  'figures.shortDate',
  'planning.sheet.rounds',
  'planning.coverage.due.no',
  'quality.care.noRound',
  'quality.effort.notSaid',
  'quality.volume.date',
  'quality.volume.percent',
  'quality.volume.round',
];

/** Names that are the same everywhere. */
const NAMES = ['desk.settings.android'];

/** Words that two languages share. */
const SHARED: Record<Other, string[]> = {
  fr: [
    'figures.explanations.minutes.title',
    'planning.coverage.strokes.lob',
    'planning.propose.minutes',
    'words.court.pause',
    'words.court.title',
    'words.courts.at',
    'words.courts.so',
    'words.court.strikes.lob',
    'card.strokeNames.lob',
    'card.strokes.lob',
    'desk.week.minutes',
  ],
  es: [
    'card.roles',
    'words.court.saidPairs',
    'words.looks.is.no',
    'words.named',
    'desk.week.minutes',
    'figures.seconds',
    'planning.block.seconds',
    'words.minutes',
  ],
};

for (const [language, whole] of Object.entries(others)) {
  describe(language, () => {
    test('has every text of English, no other, and asks for the same', () => {
      expect(shapeOf(whole)).toEqual(shapeOf(english));
    });

    test('says nothing in English but what is the same in both', () => {
      const drills = textsOf(english).filter((path) =>
        /^(words\.drills|card\.instructions)\./.test(path),
      );
      const same = textsOf(english)
        .filter((path) => !drills.includes(path))
        .filter((path) => written(textAt(whole, path)) === written(textAt(english, path)));
      const allowed = [...FORMATS, ...NAMES, ...SHARED[language as Other]];
      expect(same.sort()).toEqual(allowed.sort());
    });
  });
}

describe('French', () => {
  const texts = textsOf(others.fr).map((path) => [path, written(textAt(others.fr, path))] as const);

  test('has a narrow space that does not break before : ; ! ? and within guillemets', () => {
    // Of code, what stands between quotes; an index, a choice and a comma are none of French.
    const wrong = texts.flatMap(([path, text]) =>
      (text.match(/'[^']*'|`[^`]*`|"[^"]*"/g) ?? [])
        .map((said) => said.replace(/\$\{[^}]*\}/g, '0').replace(/\d+:\d+|0:0/g, ''))
        .filter((said) => /(?<!\u202f)[:;!?»]|«(?!\u202f)/.test(said))
        .map((said) => `${path}: ${said}`),
    );
    expect(wrong).toEqual([]);
  });

  test('has no straight apostrophe', () => {
    expect(texts.filter(([, text]) => /\p{L}'\p{L}/u.test(text))).toEqual([]);
  });

  test('counts none and one in the singular', () => {
    expect([0, 1, 2, 1000].map(fr.today.rounds)).toEqual([
      '0 passage',
      '1 passage',
      '2 passages',
      '1\u202f000 passages',
    ]);
    expect(fr.court.sets(0)).toBe('série');
  });

  test('says dates and decimals as people write them', () => {
    expect(fr.date('2026-11-25')).toBe('mercredi 25 novembre');
    expect(fr.decimal(3.5)).toBe('3,5');
    expect(fr.list(['Pip', 'Juno', 'Odile'])).toBe('Pip, Juno et Odile');
  });
});

test.each([en, ...Object.values(others).map(({ words }) => words)])(
  'counts are said as whole numbers in $language',
  (words) => {
    // The balls of a set in whose middle the roles turned are shared by the clock.
    expect(words.number(12.661)).toBe('13');
    expect(words.number(3)).toBe('3');
  },
);

describe('the language of the phone', () => {
  test('is the first that the app speaks, whatever the country', () => {
    expect(spokenOf(['de-CH', 'fr-CA', 'en-US'])).toBe('fr');
    expect(spokenOf(['ES-mx'])).toBe('es');
  });

  test('is English where the app speaks none of them', () => {
    expect(spokenOf(['de', 'frr'])).toBe('en');
    expect(spokenOf([])).toBe('en');
  });
});

describe('dates, numbers and lists', () => {
  test('are British where the phone says English and no country, or speaks something else', () => {
    for (const phone of [['en'], [], ['de-DE'], ['not a tag']]) {
      expect(localeOf('en', phone)).toBe('en-GB');
    }
  });

  test('follow the country that the phone has beside the language', () => {
    expect(localeOf('en', ['en-US', 'en'])).toBe('en-US');
    expect(localeOf('en', ['fr-CA', 'en-AU'])).toBe('en-AU');
    expect(localeOf('fr', ['fr-CH', 'fr'])).toBe('fr-CH');
    expect(localeOf('es', ['en-US', 'es-Latn-MX-u-ca-buddhist'])).toBe('es-MX');
  });

  test('are those of the language alone where the phone has no country beside it', () => {
    expect(localeOf('fr', ['fr', 'en-CA'])).toBe('fr');
    expect(localeOf('es', ['de-CH'])).toBe('es');
  });
});

test('the languages of the app stand in one place of its code', () => {
  const code = (dir: string) =>
    readdirSync(new URL(dir, import.meta.url), { recursive: true, encoding: 'utf8' })
      .filter((path) => /\.tsx?$/.test(path))
      .map((path) => [path, readFileSync(new URL(dir + path, import.meta.url), 'utf8')] as const);
  const listing = [...code('../../app/'), ...code('../../core/'), ...code('../../sw/')]
    .filter(([, source]) => {
      const named = spoken.filter((each) =>
        new RegExp(`['"]${each}['"]|^\\s*${each}:|\\.${each}\\.ts`, 'm').test(source),
      );
      return named.length > 1;
    })
    .map(([path]) => path);
  expect(listing).toEqual(['words/languages.ts']);
});

describe('every text', () => {
  const roots: Roots = {
    words: en,
    figureWords: figuresEn,
    planningWords: planningEn,
    qualityWords: qualityEn,
    deskWords: deskEn,
    cardWords: cardEn,
    handoverWords: handoverEn,
    lookWords: lookEn,
  };
  const app = new URL('../../app/', import.meta.url);
  const texts = new RegExp(`^words/(.*\\.)?(${spoken.join('|')})\\.ts$`);
  const sources = readdirSync(app, { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.tsx?$/.test(path) && !texts.test(path))
    .map((path) => readFileSync(new URL(path, app), 'utf8'));

  test.each(Object.keys(roots))('of %s is read somewhere in the app', (root) => {
    const read = new Set(sources.flatMap((source) => [...(readIn(source, roots).get(root) ?? [])]));
    expect(unread(roots[root] ?? {}, read)).toEqual([]);
  });

  const sample = { a: 'a', part: { b: 'b', c: 'c', deep: { d: 'd', e: 'e' } } };
  const unreadOf = (source: string) =>
    unread(sample, readIn(source, { words: sample }).get('words') ?? new Set());

  test('that no file reads is found, also where another part has a text of its name', () => {
    expect(unreadOf('words.value.a; const t = words.value.part; f(t.c, t.deep.d)')).toEqual([
      'part.b',
      'part.deep.e',
    ]);
    expect(unreadOf('const t = words.value.part.deep; t.a; t.b; other.e; t.d.length')).toEqual([
      'a',
      'part.b',
      'part.c',
      'part.deep.e',
    ]);
  });

  test('of a part that is indexed, handed on or taken apart is read', () => {
    expect(unreadOf('const { a, part } = words.value; part.deep[key]')).toEqual([
      'part.b',
      'part.c',
    ]);
    expect(unreadOf('<Choice names={words.value.part.deep} />')).toEqual(['a', 'part.b', 'part.c']);
  });
});

describe('Spanish as it is said in Spain', () => {
  const said = saidBy(inSpain, others.es);
  const texts = textsOf(said).map((path) => {
    const text = textAt(said, path);
    const given = Array.from({ length: 4 }, () => 2);
    if (typeof text !== 'function') return JSON.stringify(text);
    try {
      return String((text as (...given: number[]) => string)(...given));
    } catch {
      return ''; // It asks for more than numbers.
    }
  });

  test('has a pista and a resto wherever Latin America has a cancha and a devolución', () => {
    expect(texts.filter((text) => /\b(cancha|devoluci)/i.test(text))).toEqual([]);
    expect(texts.filter((text) => /\bpistas?\b/.test(text)).length).toBeGreaterThan(20);
    expect(texts.filter((text) => /\brestos?\b/i.test(text)).length).toBeGreaterThan(10);
  });

  test('has every article in the gender of its word', () => {
    expect(
      texts.filter((text) => /\b(una?s?|las?|del?a) restos?\b|\bresto profunda\b/i.test(text)),
    ).toEqual([]);
  });
});
