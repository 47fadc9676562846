import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { desk as deskEn } from '../../app/words/desk.en.ts';
import { desk as deskEs } from '../../app/words/desk.es.ts';
import { desk as deskFr } from '../../app/words/desk.fr.ts';
import { en } from '../../app/words/en.ts';
import { es } from '../../app/words/es.ts';
import { figures as figuresEn } from '../../app/words/figures.en.ts';
import { figures as figuresEs } from '../../app/words/figures.es.ts';
import { figures as figuresFr } from '../../app/words/figures.fr.ts';
import { fr } from '../../app/words/fr.ts';
import { planning as planningEn } from '../../app/words/planning.en.ts';
import { planning as planningEs } from '../../app/words/planning.es.ts';
import { planning as planningFr } from '../../app/words/planning.fr.ts';
import { spokenOf } from '../../app/words/spoken.ts';
import { type Roots, readIn, textsOf, unread } from './text-uses.ts';

const english = { words: en, figures: figuresEn, planning: planningEn, desk: deskEn };
const others = {
  fr: { words: fr, figures: figuresFr, planning: planningFr, desk: deskFr },
  es: { words: es, figures: figuresEs, planning: planningEs, desk: deskEs },
};
type Whole = typeof english;

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
  typeof text === 'function' ? text.toString().replace(/[ \n]+/g, ' ') : JSON.stringify(text);

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
  'words.minutes',
  'words.block.seconds',
  'words.court.more',
  'words.court.takeBack',
  'words.drill.role',
  'words.settle.notSeen',
  'desk.week.span',
  'desk.week.inMinutes',
  'desk.settings.version',
  'figures.number',
  'figures.rounded',
  'figures.rate',
  'figures.seconds',
  'figures.percent',
  'figures.shortDate',
  'planning.sheet.rounds',
  'planning.coverage.due.no',
];

/** Names that are the same everywhere. */
const NAMES = [
  'desk.settings.android',
  'desk.settings.languages.en',
  'desk.settings.languages.fr',
  'desk.settings.languages.es',
];

/** Words that two languages share. */
const SHARED: Record<keyof typeof others, string[]> = {
  fr: [
    'figures.explanations.minutes.title',
    'planning.coverage.strokes.lob',
    'planning.propose.minutes',
    'words.court.pause',
    'words.court.title',
    'words.courts.at',
    'words.drill.strokeNames.lob',
    'words.drill.strokes.lob',
    'desk.week.minutes',
  ],
  es: [
    'words.court.ahead',
    'words.court.roles',
    'words.court.saidPairs',
    'words.court.usual',
    'words.named',
    'words.player.usual',
    'desk.week.minutes',
  ],
};

for (const [language, whole] of Object.entries(others)) {
  describe(language, () => {
    test('has every text of English, no other, and asks for the same', () => {
      expect(shapeOf(whole)).toEqual(shapeOf(english));
    });

    test('says nothing in English but what is the same in both', () => {
      const drills = textsOf(english).filter((path) => path.startsWith('words.drills.'));
      const same = textsOf(english)
        .filter((path) => !drills.includes(path))
        .filter((path) => written(textAt(whole, path)) === written(textAt(english, path)));
      const allowed = [...FORMATS, ...NAMES, ...SHARED[language as keyof typeof others]];
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

describe('every text', () => {
  const roots: Roots = {
    words: en,
    figureWords: figuresEn,
    planningWords: planningEn,
    deskWords: deskEn,
  };
  const app = new URL('../../app/', import.meta.url);
  const sources = readdirSync(app, { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.tsx?$/.test(path) && !/^words\/(.*\.)?(en|fr|es)\.ts$/.test(path))
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
