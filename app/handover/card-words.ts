import { countsByPlayer } from '../../core/drill/counting-rules.ts';
import type { CardWork } from '../../core/exchange/card.ts';
import { drillName } from '../words/drill-text.ts';
import { words } from '../words/words.ts';

/* What a card says of a drill, on the screen and in the picture alike. */

export const cardDrill = (work: CardWork): string =>
  drillName({ drill: work.drill, ...(work.name !== undefined && { name: work.name }) });

export const cardSets = ({ rule, sets }: CardWork): string =>
  countsByPlayer(rule) ? words.value.player.onTarget : words.value.player.sets(sets);

export function cardUsual({ usual, best }: CardWork): string {
  const t = words.value.player;
  return usual === undefined || best === undefined ? t.first : `${t.usual(usual)}, ${t.best(best)}`;
}
