import type { Family, Terms } from '../core/drill/drill.ts';
import type { Random } from './random.ts';
import type { Member } from './squad.ts';

/** The probability that a player's shot is good, off a partner's ball, at a drill. */
export type Success = (terms: Terms) => (striker: string, partner: string) => number;

/** Logit of a good shot for a player of the middle level. Lobs and serves miss more than rallies. */
const BASE: Record<Family, number> = {
  groundstrokes: 2.5,
  volleys: 2.3,
  'overheads-and-lobs': 2,
  'serves-and-returns': 2.1,
};
/** To meet a target is far less sure than to keep a ball in play. */
const ON_TARGET = -3.2;
const MIDDLE_LEVEL = 5.5;
const A_LEVEL = 0.16;
/** Good days and bad ones. */
const FORM = 0.15;

/** The squad's skill on one day, `gone` of the season behind it (0 to 1). */
export function skillOn(squad: readonly Member[], gone: number, random: Random): Success {
  const today = new Map(
    squad.map((member) => {
      const { level = MIDDLE_LEVEL, gain } = member;
      const own = (level - MIDDLE_LEVEL) * A_LEVEL + gain * gone + random.normal(0, FORM);
      return [member.id, { ...member, own }];
    }),
  );
  return ({ family, rule }) => {
    const base = BASE[family] + (rule === 'on-target' ? ON_TARGET : 0);
    return (striker, partner) => {
      const { own = 0, bent = {} } = today.get(striker) ?? {};
      const help = today.get(partner)?.help ?? 0;
      return 1 / (1 + Math.exp(-(base + own + (bent[family] ?? 0) + help)));
    };
  };
}
