import { describe, expect, test } from 'vitest';
import { drills as headsEn } from '../../app/words/drills.en.ts';
import { drills as headsEs } from '../../app/words/drills.es.ts';
import { drills as headsFr } from '../../app/words/drills.fr.ts';
import { instructions as runEn } from '../../app/words/instructions.en.ts';
import { instructions as runEs } from '../../app/words/instructions.es.ts';
import { instructions as runFr } from '../../app/words/instructions.fr.ts';
import type { Marker } from '../../core/drill/drill.ts';
import { DrillText } from '../../core/drill/drill.ts';
import { type StarterDrillId, starterDrills } from '../../core/drill/starter-drills.ts';
import { check } from '../reference/values.ts';

const metres = (element: string): number => check(`I.${element}`).expected.metres_exact;
const baseline = metres('derived.baseline_to_net');
const sideline = metres('singles_width') / 2;
const serviceLine = metres('service_line_from_net');

/** Half of the last digit that a sentence gives. */
const ROUNDING = 0.005 + 1e-9;

/** All that is said of a drill: what it is called, and how it is run. */
const whole = (heads: typeof headsEn, run: typeof runEn) =>
  Object.fromEntries(
    Object.keys(heads).map((id) => {
      const known = id as StarterDrillId;
      return [known, { ...heads[known], ...run[known] }];
    }),
  ) as Record<StarterDrillId, (typeof headsEn)[StarterDrillId] & (typeof runEn)[StarterDrillId]>;
const [en, fr, es] = [whole(headsEn, runEn), whole(headsFr, runFr), whole(headsEs, runEs)];

type Line = 'net' | 'service' | 'baseline' | 'centre' | 'sideline';
type Use = Marker['use'];

interface Language {
  drills: typeof en;
  /** How the side is named that a serve drill begins on. */
  serves: { deuce: RegExp; ad: RegExp };
  number: RegExp;
  /** What follows "… m" when a distance is told, by the line it is told from. */
  from: Record<Exclude<Line, 'service'>, string>;
  /** How a line is named that a marker is on, or in line with. */
  on: Record<Exclude<Line, 'net'>, string>;
  use: Record<Use, RegExp>;
}

const languages: Record<string, Language> = {
  en: {
    drills: en,
    serves: {
      deuce: /(?:begin on|from) the deuce side/i,
      ad: /(?:begin on|from) the ad side/i,
    },
    number: /^\d+\.\d\d$/,
    from: {
      net: 'from the net',
      baseline: 'behind (?:the|both) baselines?',
      centre: 'from the centre (?:line|mark)',
      sideline: 'from the singles sideline',
    },
    on: {
      service: 'service lines?',
      baseline: 'baselines?',
      centre: 'centre (?:line|mark)',
      sideline: 'singles sideline',
    },
    use: {
      target: /^target markers?\b/i,
      recovery: /^recovery markers?\b/i,
      start: /^start markers?\b/i,
      lane: /^lane markers?\b/i,
    },
  },
  fr: {
    drills: fr,
    serves: {
      deuce: /(?:commencer|du) côté égalité/i,
      ad: /(?:commencer|du) côté avantage/i,
    },
    number: /^\d+,\d\d$/,
    from: {
      net: 'du filet',
      baseline: 'derrière (?:la ligne|les lignes) de fond',
      centre: 'de la (?:ligne médiane|marque centrale)',
      sideline: 'de la ligne latérale de simple',
    },
    on: {
      service: 'lignes? de service',
      baseline: 'lignes? de fond',
      centre: 'ligne médiane|marque centrale',
      sideline: 'ligne latérale de simple',
    },
    use: {
      target: /^plots? de cible\b/i,
      recovery: /^plots? de replacement\b/i,
      start: /^plots? de départ(?!\p{L})/iu,
      lane: /^plots? de séparation\b/i,
    },
  },
  es: {
    drills: es,
    serves: {
      deuce: /(?:empezar en|desde) el lado de iguales/i,
      ad: /(?:empezar en|desde) el lado de ventaja/i,
    },
    number: /^\d+,\d\d$/,
    from: {
      net: 'de la red',
      baseline: 'tras (?:la línea|las líneas) de fondo',
      centre: 'de la (?:línea|marca) central',
      sideline: 'de la línea lateral de individuales',
    },
    on: {
      service: 'líneas? de saque',
      baseline: 'líneas? de fondo',
      centre: '(?:línea|marca) central',
      sideline: 'línea lateral de individuales',
    },
    use: {
      target: /^conos? de objetivo\b/i,
      recovery: /^conos? de recuperación(?!\p{L})/iu,
      start: /^conos? de salida\b/i,
      lane: /^conos? de carril\b/i,
    },
  },
};

/** How far a marker is from a line, as a sentence would tell it. */
const away: Record<Line, (at: Marker['at']) => number> = {
  net: ({ y }) => Math.abs(y),
  service: ({ y }) => Math.abs(Math.abs(y) - serviceLine),
  baseline: ({ y }) => Math.abs(y) - baseline,
  centre: ({ x }) => Math.abs(x),
  sideline: ({ x }) => sideline - Math.abs(x),
};
const across: readonly Line[] = ['net', 'service', 'baseline'];

interface Claim {
  line: Line;
  metres: number;
}

/** What one part of a setup sentence claims of its markers: which use, and how far from what. */
function claimsOf(part: string, language: Language): { use: Use | undefined; claims: Claim[] } {
  const claims: Claim[] = [];
  let rest = part.trim();
  const use = (Object.keys(language.use) as Use[]).find((use) => language.use[use].test(rest));
  for (const [line, words] of Object.entries(language.from) as [Line, string][]) {
    rest = rest.replace(new RegExp(`([\\d.,]+) m ${words}`, 'g'), (_, number: string) => {
      expect(number).toMatch(language.number);
      claims.push({ line, metres: Number(number.replace(',', '.')) });
      return '';
    });
  }
  expect(rest, 'no number is left that says nothing of a marker').not.toMatch(/\d/);
  for (const [line, words] of Object.entries(language.on) as [Line, string][]) {
    if (new RegExp(words).test(rest)) claims.push({ line, metres: 0 });
  }
  return { use, claims };
}

const agrees = ({ line, metres }: Claim, at: Marker['at']) =>
  Math.abs(away[line](at) - metres) <= ROUNDING;

/** Whether a marker is one of those that a part of the sentence is about. */
function isMeant({ at, use }: Marker, part: ReturnType<typeof claimsOf>): boolean {
  const lengthwise = part.claims.filter(({ line }) => across.includes(line));
  const sideways = part.claims.filter(({ line }) => !across.includes(line));
  return (
    use === part.use &&
    lengthwise.some((claim) => agrees(claim, at)) &&
    sideways.some((claim) => agrees(claim, at))
  );
}

describe.each(Object.entries(languages))('the words of the starter drills in %s', (_, language) => {
  const { drills } = language;
  const each = test.each(
    starterDrills.map((drill) => [drill.id, drill, drills[drill.id as StarterDrillId]] as const),
  );

  test('are there for every starter drill, and for no other', () => {
    expect(Object.keys(drills)).toEqual(starterDrills.map(({ id }) => id));
  });

  test('give each drill a name, an intention and a cue of its own', () => {
    const all = Object.values(drills);
    for (const key of ['name', 'intention', 'cue'] as const) {
      expect(new Set(all.map((words) => words[key])).size, key).toBe(all.length);
    }
  });

  each('fit the schema and a phone for %s', (_, _drill, { setup, ...text }) => {
    expect(DrillText.parse(text)).toEqual(text);
    expect(text.name.length).toBeLessThanOrEqual(28);
    expect(text.intention.length).toBeLessThanOrEqual(160);
    expect(text.cue.length).toBeLessThanOrEqual(70);
    expect(setup.length).toBeLessThanOrEqual(220);
    for (const task of text.tasks) expect(task.length).toBeLessThanOrEqual(105);
    expect(text.feed.length).toBeLessThanOrEqual(200);
    expect(text.counts.length).toBeLessThanOrEqual(160);
    for (const role of text.roles) {
      expect(role.length).toBeGreaterThan(0);
      expect(role.length).toBeLessThanOrEqual(14);
    }
  });

  each('are one sentence each for the intention, cue and setup of %s', (_, _drill, words) => {
    for (const sentence of [words.intention, words.cue, words.setup]) {
      expect(sentence).toMatch(/^\p{Lu}.*\.$/u);
      expect(sentence.replace(/\d\.\d/g, '').match(/[.!?]/g)).toHaveLength(1);
      expect(sentence).not.toMatch(/ {2}|'/);
    }
    expect(words.name).not.toMatch(/\.$/);
  });

  each('say how %s is run: what each role does, who feeds, what counts', (_, _drill, text) => {
    for (const task of text.tasks) expect(task).toMatch(/^\p{Ll}.*[^.]$/u);
    for (const said of [text.feed, text.counts]) {
      expect(said).toMatch(/^[\p{Lu}\d].*\.$/u);
      expect(said).not.toMatch(/ {2}|'/);
    }
    expect(text.feed).toMatch(/\b1\b|partner|partenaire|compañero/);
    // A role's task speaks of the partner by number, never of itself.
    if (text.tasks[0] !== text.tasks[1]) {
      expect(text.tasks[0]).not.toMatch(/\b1\b/);
      expect(text.tasks[1]).not.toMatch(/\b2\b/);
    } else {
      expect(text.tasks[0]).not.toMatch(/\d/);
    }
  });

  each('say of %s whether its target must be met', (_, drill, { counts, feed }) => {
    if (!drill.target) return;
    const must =
      /in the target|inside the marker|dans la cible|entre le plot|en el objetivo|entre el cono/;
    const need =
      /need not meet|no must|anywhere|sans devoir|pas exigée|partout|sin tener que|no se exige|en toda/;
    expect(
      [must, need].filter((way) => way.test(counts)),
      `${counts} ${feed}`,
    ).toHaveLength(1);
    if (drill.rule === 'on-target') expect(counts).toMatch(must);
  });

  each('name the side first on which %s begins, as it is drawn', (_, drill, { feed }) => {
    const [first] = drill.shots;
    if (first?.stroke !== 'serve' || drill.perCourt > 1) return;
    const [own, other] =
      drill.roles[0].start.x > 0
        ? [language.serves.deuce, language.serves.ad]
        : [language.serves.ad, language.serves.deuce];
    const at = feed.search(own);
    expect(at).toBeGreaterThanOrEqual(0);
    const elsewhere = feed.search(other);
    if (elsewhere >= 0) expect(at).toBeLessThan(elsewhere);
  });

  each('name the two roles of %s apart when they strike differently', (_, drill, { roles }) => {
    const strokesOf = (role: 0 | 1) =>
      new Set(drill.shots.filter((shot) => shot.role === role).map((shot) => shot.stroke));
    const [mine, theirs] = [strokesOf(0), strokesOf(1)];
    const alike = mine.size === theirs.size && [...mine].every((stroke) => theirs.has(stroke));
    expect(alike || roles[0] !== roles[1]).toBe(true);
  });

  each('tell where every marker of %s is, and nothing that is not so', (_, drill, { setup }) => {
    const parts = setup.split(';').map((part) => claimsOf(part, language));
    for (const marker of drill.markers) {
      expect(
        parts.some((part) => isMeant(marker, part)),
        `${marker.use} marker at ${marker.at.x}, ${marker.at.y}`,
      ).toBe(true);
    }
    for (const part of parts) {
      const meant = drill.markers.filter((marker) => isMeant(marker, part));
      for (const claim of part.claims) {
        expect(
          meant.some(({ at }) => agrees(claim, at)),
          `${claim.metres} m, ${claim.line}`,
        ).toBe(true);
      }
    }
  });
});

const numbers = (sentence: string) =>
  sentence.match(/\d+[.,]\d+/g)?.map((n) => n.replace(',', '.'));

test('the three languages give the same distances in the same order', () => {
  for (const { id } of starterDrills as readonly { id: StarterDrillId }[]) {
    const inEnglish = numbers(en[id].setup);
    expect(inEnglish, id).toBeDefined();
    expect(numbers(fr[id].setup), id).toEqual(inEnglish);
    expect(numbers(es[id].setup), id).toEqual(inEnglish);
  }
});

test('what both roles do alike in one language is so in all', () => {
  for (const id of Object.keys(en) as StarterDrillId[]) {
    const same = [en, fr, es].map(({ [id]: { tasks } }) => tasks[0] === tasks[1]);
    expect(new Set(same).size, id).toBe(1);
  }
});

test('a role that is the same for both in one language is so in all', () => {
  for (const id of Object.keys(en) as StarterDrillId[]) {
    const same = [en, fr, es].map(({ [id]: { roles } }) => roles[0] === roles[1]);
    expect(new Set(same).size, id).toBe(1);
  }
});

test('French keeps a colon and a semicolon on the line of the word before', () => {
  for (const { name, intention, cue, setup, tasks, feed, counts } of Object.values(fr)) {
    for (const words of [name, intention, cue, setup, ...tasks, feed, counts])
      expect(words).not.toMatch(/[^\u202f][:;?!]/);
  }
});
