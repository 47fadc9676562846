import type { Card } from '../../core/exchange/card.ts';
import { sumEstimates } from '../../core/figures/all-touches.ts';
import { lastDay } from '../../core/figures/last-day.ts';
import { playerStints } from '../../core/figures/stints.ts';
import { ownDay } from '../../core/figures/usual.ts';
import { estimated } from '../estimates.ts';
import { squad } from '../ledger.ts';

/** The card of a player's last day; undefined where nothing was counted for the player yet. */
export function cardOf(player: string): Card | undefined {
  const known = squad.value.get(player);
  const found = lastDay(estimated.value, player);
  if (!known || !found) return undefined;
  const { counted, all } = sumEstimates(playerStints([found.day]).get(player) ?? []);
  return {
    name: known.name,
    date: found.day.date,
    counted,
    ...(all && { all }),
    works: ownDay(found.earlier, found.day, player).map(({ terms, sets, usual, best }) => ({
      drill: terms.drill,
      ...(terms.name !== undefined && { name: terms.name }),
      rule: terms.rule,
      size: terms.size,
      sets,
      ...(usual !== undefined && { usual }),
      ...(best !== undefined && { best }),
    })),
  };
}
