import { waiting } from '../estimates.ts';
import { trends } from '../player-trends.ts';
import { figureWords } from '../words/figure-words.ts';
import { kindName } from '../words/kind-name.ts';
import { TrendPicture } from './trend-picture.tsx';

/** Whether it gets better, for each kind of work that the player has done lately, whoever looks. */
export function Trends({ player, note }: { player: string; note: string }) {
  const f = figureWords.value;
  const own = trends.value?.get(player);
  return (
    <section class="part" aria-labelledby="trends">
      <h2 id="trends">{f.trends}</h2>
      <p class="small">{note}</p>
      {waiting.value > 0 ? (
        <p role="status">{f.beingWorkedOut(waiting.value)}</p>
      ) : own ? (
        own.map((work) => (
          <TrendPicture key={kindName(work)} name={kindName(work)} trend={work.trend} />
        ))
      ) : (
        <p>{f.review.noLevel}</p>
      )}
    </section>
  );
}
