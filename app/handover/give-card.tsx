import { href } from '../route.ts';
import { handoverWords } from '../words/handover-words.ts';

/** The way to a player's card. */
export const GiveCard = ({ player }: { player: string }) => (
  <a class="button" href={href('handover', 'give', player)}>
    {handoverWords.value.card.give}
  </a>
);
