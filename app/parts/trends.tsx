import { playerTrends } from '../../core/figures/player-trends.ts';
import { estimated, waiting } from '../estimates.ts';
import { figureWords } from '../words/figure-words.ts';
import { kindName } from '../words/kind-name.ts';
import { TrendPicture } from './trend-picture.tsx';

/**
 * Whether it gets better, for each kind of work that the player has done: over all practices,
 * whoever looks. While some are still being worked out no word is said of the rest, for it might
 * be another one.
 */
export function Trends({ player, note }: { player: string; note: string }) {
  const f = figureWords.value;
  return (
    <section class="part" aria-labelledby="trends">
      <h2 id="trends">{f.trends}</h2>
      <p class="small">{note}</p>
      {waiting.value > 0 ? (
        <p role="status">{f.beingWorkedOut(waiting.value)}</p>
      ) : (
        playerTrends(estimated.value)
          .get(player)
          ?.map((work) => (
            <TrendPicture key={kindName(work)} name={kindName(work)} trend={work.trend} />
          ))
      )}
    </section>
  );
}
