import type { Drill, Stroke } from '../drill/drill.ts';
import { type Level, toldLevel } from '../figures/level.ts';
import type { LevelChange } from '../figures/level-change.ts';
import type { LevelFit } from '../figures/level-fit.ts';
import { type LinePoint, levelLine } from '../figures/level-line.ts';
import { type Need, needsOf } from '../figures/level-needs.ts';
import { changeWord } from '../figures/level-word.ts';
import type { SizeFit } from '../figures/size-fit.ts';
import { squadChange, squadWord } from '../figures/squad-change.ts';
import type { TrendWord } from '../figures/trend.ts';
import { drillFor, mostLeftOut, type StrokeLeftOut } from './left-out.ts';
import type { NextPartners } from './next-partners.ts';

/** The five questions of a coach's evening, in the order in which their answers can be acted on. */
export const questions = ['left-out', 'size', 'pair', 'need', 'change'] as const;
export type Question = (typeof questions)[number];

/** One answer that is worth a coach's minute, with what it rests on and what can be done. */
export type Finding =
  | { about: 'left-out'; stroke: Stroke; days?: number; left: StrokeLeftOut; drill?: Drill }
  | { about: 'size'; fit: SizeFit }
  | { about: 'pair'; partners: NextPartners }
  | { about: 'need'; need: Need; level: Level; squad: number; drill?: Drill }
  | {
      about: 'change';
      word: Exclude<TrendWord, 'too-few'>;
      change: LevelChange;
      line: LinePoint[];
      /** Players of whom it is sure that they rose, or fell, in the squad's order. */
      rising: string[];
      falling: string[];
    };

/** What the findings are looked for in. */
export interface Known {
  /** Everybody who is asked for, in the squad's order. */
  players: readonly string[];
  /** Balls that come back; undefined where nothing is known of them. */
  fit: LevelFit | undefined;
  left: readonly StrokeLeftOut[];
  sizes: readonly SizeFit[];
  partners: readonly NextPartners[];
  /** Drills that may be proposed, and days since each was played. */
  drills: readonly Drill[];
  daysSince: (drill: string) => number | undefined;
}

/** Partners again after so many days are no news: a half-life of meetings. */
const PARTNERS_AGAIN_DAYS = 14;
/** As sure as this a need is said. */
const SURE_NEED = 0.9;
/** A need that a coach would want to know of, in logits: about three balls in a hundred; ours. */
const LEAST_NEED = 0.3;

/**
 * The answers to the five questions, at most one each, and the questions to which there is nothing to
 * say. No finding stands without what it rests on.
 */
export function findings(known: Known): { found: Finding[]; silent: Question[] } {
  const answers: Record<Question, Finding | undefined> = {
    'left-out': leftOutFinding(known),
    size: sizeFinding(known),
    pair: pairFinding(known),
    need: needFinding(known),
    change: changeFinding(known),
  };
  return {
    found: questions.flatMap((question) => answers[question] ?? []),
    silent: questions.filter((question) => !answers[question]),
  };
}

function leftOutFinding({ left, drills, daysSince }: Known): Finding | undefined {
  const most = mostLeftOut(left);
  if (!most) return undefined;
  const { stroke, days } = most;
  const drill = drillFor(stroke, drills, daysSince);
  return {
    ...{ about: 'left-out', stroke, left: most },
    ...(days !== undefined && { days }),
    ...(drill && { drill }),
  };
}

/** The drill that lies farthest from four sets in a round, by their ratio. */
function sizeFinding({ sizes }: Known): Finding | undefined {
  const off = ({ expected, fitting }: SizeFit) =>
    Math.abs(Math.log((expected + 0.5) / (fitting + 0.5)));
  const [worst] = sizes
    .filter(({ verdict, size, terms }) => verdict !== 'fits' && size !== terms.size)
    .sort((a, b) => off(b) - off(a));
  return worst && { about: 'size', fit: worst };
}

function pairFinding({ partners, fit }: Known): Finding | undefined {
  const [first] = partners.filter(
    ({ players, days }) =>
      players.length === 2 &&
      (days ?? Number.POSITIVE_INFINITY) > PARTNERS_AGAIN_DAYS &&
      players.every((player) => fit?.players.has(player)),
  );
  return first && { about: 'pair', partners: first };
}

function needFinding({ fit, players, drills, daysSince }: Known): Finding | undefined {
  const need =
    fit &&
    needsOf(fit, players).find(({ below, sure }) => below >= LEAST_NEED && sure >= SURE_NEED);
  const level = need && toldLevel(fit, need.player, need.kind);
  const squad = need && levelLine(fit, { kind: need.kind })?.at(-1)?.share;
  if (!need || !level || squad === undefined) return undefined;
  const waits = ({ id }: Drill) => daysSince(id) ?? Number.POSITIVE_INFINITY;
  const [drill] = drills
    .filter(({ family, rule }) => family === need.kind && rule !== 'on-target')
    .sort((a, b) => waits(b) - waits(a) || 0);
  return { about: 'need', need, level, squad, ...(drill && { drill }) };
}

function changeFinding({ fit, players }: Known): Finding | undefined {
  const word = fit && squadWord(fit, players);
  const change = fit && squadChange(fit, players);
  const line = fit && levelLine(fit);
  if (!fit || !word || word === 'too-few' || !change || !line) return undefined;
  const those = (wanted: TrendWord) =>
    players.filter((player) => changeWord(fit, player) === wanted);
  const [rising, falling] = [those('rising'), those('falling')];
  if (word === 'unclear' && rising.length + falling.length === 0) return undefined;
  return { about: 'change', word, change, line, rising, falling };
}
