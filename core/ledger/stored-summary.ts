import { isDate } from '../calendar.ts';
import { countingRules, families, strokes } from '../drill/drill.ts';
import { isRecord } from '../is-record.ts';
import { sights } from '../round/look.ts';
import type { Summary } from './summary.ts';

/**
 * Whether a stored record has what figures read of a summary, in the shape they read it; it may
 * have more. Written out by hand: ten seasons of summaries are looked at whenever figures are
 * wanted, and a schema takes ten times as long.
 */
export const isSummary = (record: unknown): record is Summary =>
  isRecord(record) &&
  isLeftOutOr(record.version, isCount) &&
  isText(record.practice) &&
  isText(record.date) &&
  isDate(record.date) &&
  isLeftOutOr(record.opened, isText) &&
  isLeftOutOr(record.struck, (is) => is === true) &&
  isListOf(record.attended, isText) &&
  isLeftOutOr(record.paces, isPaces) &&
  isLeftOutOr(record.efforts, isEfforts) &&
  isListOf(record.rounds, isRound);

const isRound = (round: unknown): boolean =>
  isRecord(round) &&
  isText(round.id) &&
  isCount(round.ordinal) &&
  isTerms(round.terms) &&
  isSeconds(round.seconds) &&
  typeof round.settled === 'boolean' &&
  isLeftOutOr(round.jumped, Number.isFinite) &&
  isLeftOutOr(round.unwatched, (stretches) => isListOf(stretches, isStretch)) &&
  isLeftOutOr(round.focus, isText) &&
  isLeftOutOr(round.looks, (looks) => isListOf(looks, isLook)) &&
  isListOf(round.tallies, isTally);

const isStretch = (stretch: unknown): boolean =>
  isRecord(stretch) && isSeconds(stretch.from) && isSeconds(stretch.to);

const isLook = (look: unknown): boolean =>
  isRecord(look) &&
  isText(look.player) &&
  isText(look.focus) &&
  isSeconds(look.second) &&
  isOneOf(sights, look.saw) &&
  typeof look.by === 'string';

const isTerms = (terms: unknown): boolean =>
  isRecord(terms) &&
  isText(terms.drill) &&
  isLeftOutOr(terms.name, isText) &&
  isOneOf(families, terms.family) &&
  isOneOf(countingRules, terms.rule) &&
  isCount(terms.size) &&
  terms.size > 0 &&
  isListOf(terms.shots, isShot) &&
  terms.shots.length > 0;

const isShot = (shot: unknown): boolean =>
  isRecord(shot) && (shot.role === 0 || shot.role === 1) && isOneOf(strokes, shot.stroke);

const isTally = (tally: unknown): boolean =>
  isRecord(tally) &&
  isRecord(tally.pair) &&
  isText(tally.pair.letter) &&
  isListOf(tally.pair.players, isText) &&
  (tally.pair.players.length === 2 || tally.pair.players.length === 3) &&
  isCount(tally.sets) &&
  isLeftOutOr(
    tally.byPlayer,
    (counts) => isRecord(counts) && Object.values(counts).every(isCount),
  ) &&
  isListOf(tally.times, isSeconds) &&
  isCount(tally.late) &&
  isCount(tally.doubtful) &&
  isCount(tally.open) &&
  isLeftOutOr(tally.unheard, (players) => isListOf(players, isText)) &&
  isLeftOutOr(tally.origin, (origin) => isOneOf(['called', 'corrected'], origin)) &&
  isLeftOutOr(tally.span, isStretch) &&
  isLeftOutOr(tally.turned, isSeconds) &&
  isLeftOutOr(tally.showing, isCount) &&
  isLeftOutOr(tally.best, isCount) &&
  isLeftOutOr(tally.also, (also) => isListOf(also, isOtherCount)) &&
  isLeftOutOr(tally.estimate, isEstimate);

const isOtherCount = (other: unknown): boolean =>
  isRecord(other) && typeof other.phone === 'string' && isCount(other.sets);

const isEstimate = (estimate: unknown): boolean =>
  isRecord(estimate) &&
  isCount(estimate.model) &&
  isLeftOutOr(estimate.pace, isPace) &&
  [estimate.shots, estimate.sd, estimate.low, estimate.high].every(isSeconds) &&
  isLeftOutOr(estimate.success, isConsistency) &&
  isLeftOutOr(
    estimate.own,
    (shares) => isRecord(shares) && Object.values(shares).every(isConsistency),
  ) &&
  isLeftOutOr(estimate.implausible, (is) => is === true);

const isConsistency = (known: unknown): boolean =>
  isRecord(known) &&
  isGap(known.consistency) &&
  Number(known.consistency) < 1 &&
  isGap(known.consistencySd);

const isPaces = (paces: unknown): boolean => isRecord(paces) && Object.values(paces).every(isPace);

const isPace = (pace: unknown): boolean =>
  isRecord(pace) && [pace.tempo, pace.refeed].every((gap) => isLeftOutOr(gap, isGap));

const isEfforts = (efforts: unknown): boolean =>
  isRecord(efforts) &&
  Object.values(efforts).every(
    (told) =>
      isRecord(told) && [told.effort, told.minutes].every((each) => isLeftOutOr(each, isSeconds)),
  );

const isText = (value: unknown): value is string => typeof value === 'string' && value !== '';
const isCount = (value: unknown): value is number => Number.isInteger(value) && Number(value) >= 0;
const isSeconds = (value: unknown): boolean => Number.isFinite(value) && Number(value) >= 0;
const isGap = (value: unknown): boolean => Number.isFinite(value) && Number(value) > 0;
const isOneOf = (all: readonly string[], value: unknown): boolean =>
  typeof value === 'string' && all.includes(value);
const isListOf = (value: unknown, each: (item: unknown) => boolean): value is unknown[] =>
  Array.isArray(value) && value.every(each);
const isLeftOutOr = (value: unknown, is: (value: unknown) => boolean): boolean =>
  value === undefined || is(value);

/**
 * Whether a stored record says all that a summary says, whatever else it says: a figure kept beside
 * a tally, or what a newer version added. One that does not was damaged, or an older version made it.
 */
export const saysAll = (record: unknown, summary: Summary): boolean => includes(record, summary);

function includes(whole: unknown, part: unknown): boolean {
  if (typeof part !== 'object' || part === null) return Object.is(whole, part);
  if (typeof whole !== 'object' || whole === null) return false;
  if (Array.isArray(part) && (!Array.isArray(whole) || whole.length !== part.length)) return false;
  return Object.entries(part).every(([field, value]) =>
    includes((whole as Record<string, unknown>)[field], value),
  );
}
