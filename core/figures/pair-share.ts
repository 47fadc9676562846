import type { Terms } from '../drill/drill.ts';
import type { Consistency } from '../ledger/summary.ts';
import { evidence } from './evidence.ts';
import type { LevelFit } from './level-fit.ts';
import { levelParts, type Part } from './level-parts.ts';
import type { LevelTally } from './level-tallies.ts';
import { fromLogit } from './logit.ts';

/** A share of balls that come back, and what it rests on. */
export interface PairShare extends Consistency {
  /** Rounds of these players together at the drill; 0 where it rests on those of each with others. */
  together: number;
}

/**
 * How much two suit each other at a drill beyond what each brings along, sd in logits. Ours: in
 * simulation it costs squads that are alike next to nothing and helps a squad of very unlike pairs in
 * its first rounds (tests/bench/set-size.ts).
 */
const SUITS_SD = 0.5;

/**
 * The share of balls that come back when these players do a drill together now: the mean of their own
 * shares, as each strikes as many balls as the others, moved by their own rounds at it together. It
 * is what every advice rests on, so that no screen says of a pair what another one denies.
 *
 * A drill that was not played in the window, and a player who was not seen at the kind of work, are
 * taken as any other of the squad, and the sd says so. The sd is by the delta method, to first order.
 *
 * Undefined where nobody of them was seen at the kind. For balls that come back only.
 */
export function pairShare(
  fit: LevelFit,
  { family, drill, rule }: Pick<Terms, 'family' | 'drill' | 'rule'>,
  players: readonly string[],
): PairShare | undefined {
  const work = fit.kinds.get(family);
  if (!work || !players.some((player) => work.players.has(player))) return undefined;
  const { priors } = fit;
  // A size is another drill to the fit; what a pair can do is the same at all of them.
  const isDrill = (countedAs: string) => countedAs.startsWith(`${drill} ${rule} `);
  const sizes = [...work.drills].filter(([countedAs]) => isDrill(countedAs));
  const played = sizes.reduce((sum, [, { tallies }]) => sum + tallies, 0);
  const common: Part[] = [
    [work.level, 1],
    ...sizes.map(([, { level, tallies }]): Part => [level, tallies / played]),
  ];
  const each = players.map((player) => {
    const parts = [...common, ...ownParts(fit, family, player)];
    const { share } = fromLogit(fit.sum(parts).mean);
    return { parts, share, weight: (share * (1 - share)) / players.length, player };
  });
  const moved = each.flatMap(({ parts, weight }) =>
    parts.map(([unknown, times]): Part => [unknown, weight * times]),
  );
  const weights = each.reduce((sum, { weight }) => sum + weight, 0);
  const unseen = [
    sizes.length === 0 ? weights * priors.drillSd : 0,
    ...each.flatMap(({ player, weight }) => [
      fit.players.has(player) ? 0 : weight * priors.playerSd,
      work.players.has(player) ? 0 : weight * priors.playerKindSd,
    ]),
  ];
  const mean = each.reduce((sum, { share }) => sum + share, 0) / players.length;
  const own = fit.tallies.filter(
    (tally) => tally.kind === family && isDrill(tally.drill) && areThese(tally, players),
  );
  const suits = suiting(fit, mean, own);
  const spread = mean * (1 - mean);
  const { share } = fromLogit(Math.log(mean / (1 - mean)) + suits.mean);
  return {
    consistency: share,
    consistencySd:
      (share * (1 - share) * Math.hypot(fit.sum(moved).sd, ...unseen, spread * suits.sd)) / spread,
    together: own.length,
  };
}

const areThese = ({ players }: LevelTally, these: readonly string[]) =>
  players.length === these.length && players.every((player) => these.includes(player));

/** What is known of a player at a kind: of one who was not seen at it what is common to all kinds. */
function ownParts(fit: LevelFit, family: Terms['family'], player: string): Part[] {
  const seen = levelParts(fit, player, family);
  const line = fit.players.get(player);
  return seen.length === 0 && line ? [[line.level, 1]] : seen;
}

/** By how many logits these rounds lie off a share, drawn towards none: one step of Newton's method. */
function suiting({ priors, dispersion }: LevelFit, share: number, own: readonly LevelTally[]) {
  let slope = 0;
  let curve = 1 / SUITS_SD ** 2;
  for (const { success } of own) {
    const { hits, misses } = evidence(success, priors.share);
    slope += (hits - (hits + misses) * share) / dispersion;
    curve += ((hits + misses) * share * (1 - share)) / dispersion;
  }
  return { mean: slope / curve, sd: 1 / Math.sqrt(curve) };
}
