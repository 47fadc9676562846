import { countsByPlayer } from '../../core/drill/counting-rules.ts';
import type { OwnWork } from '../../core/figures/usual.ts';
import { drillName } from '../words/drill-text.ts';
import { lookWords } from '../words/look-words.ts';
import { OwnMeasure } from './own-measure.tsx';

/** The day in one picture: each drill as a painted line beside the own usual and best. */
export function OwnPicture({ works }: { works: readonly OwnWork[] }) {
  const t = lookWords.value.player;
  return (
    <figure class="own-picture">
      <ul>
        {works.map((work) => (
          <li key={`${work.drill} ${work.terms.rule} ${work.terms.size}`}>
            <p class="own-picture-name">
              <span class="grow break">{drillName(work.terms)}</span>
              <b class="number">{madeIn(work, work.sets)}</b>
            </p>
            <p class={work.usual === undefined ? 'small faint' : 'unseen'}>
              {t.beside(work.usual, work.best)}
            </p>
            <OwnMeasure work={work} />
          </li>
        ))}
      </ul>
      {works.some(({ usual }) => usual !== undefined) && (
        <figcaption class="own-key small" aria-hidden="true">
          <i class="own-usual" /> {t.usualSign} <i class="own-best" /> {t.bestSign}
        </figcaption>
      )}
    </figure>
  );
}

/** So many sets of a drill, or balls on target, as they are said. */
export function madeIn({ terms }: Pick<OwnWork, 'terms'>, sets: number): string {
  const t = lookWords.value.player;
  return countsByPlayer(terms.rule) ? t.madeOnTarget(sets) : t.madeSets(sets);
}
