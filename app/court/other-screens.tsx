import type { Pair } from '../../core/round/pair.ts';
import { namesOf } from '../parts/names.ts';
import { href } from '../route.ts';
import { words } from '../words/words.ts';
import './other-screens.css';

/** The ways to the screens that others than the coach look at. */
export function OtherScreens({ pairs }: { pairs: readonly Pair[] }) {
  const t = words.value.court;
  return (
    <div class="stack">
      <p class="small">{t.pairScreenMeans}</p>
      <ul class="row">
        {pairs.map(({ letter, players }) => (
          <li key={letter}>
            <a
              class="button"
              href={href('pair', letter)}
              aria-label={t.pairScreenOf(letter, namesOf(players))}
            >
              {letter}
            </a>
          </li>
        ))}
      </ul>
      <p class="small">{t.wallMeans}</p>
      <a class="button" href={href('wall')} target="_blank" rel="noopener">
        {t.wall}
      </a>
    </div>
  );
}
