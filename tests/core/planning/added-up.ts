import type { Block, Prices } from '../../../core/planning/block-cost.ts';

/** What a block costs, added up step by step, in which no drill comes twice and whose rounds come to `prices.rounds`. */
export function addedUp(block: Block, prices: Prices): number {
  const rounds = prices.family.map(() => 0);
  let cost = 0;
  block.forEach((step, at) => {
    const before = block[at - 1];
    cost += before ? prices.move[before.drill]![step.drill]! : prices.open[step.drill]!;
    cost += prices.step[step.drill]![step.rounds]!;
    rounds[prices.familyOf[step.drill]!]! += step.rounds;
  });
  return prices.family.reduce((sum, price, at) => sum + price[rounds[at]!]!, cost);
}
