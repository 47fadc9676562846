import type { KindTrend } from '../../core/figures/player-trends.ts';
import { lastWeeks } from '../../core/figures/review.ts';
import { pairStints, playerStints } from '../../core/figures/stints.ts';
import { trendWords as trendWordsInOrder } from '../../core/figures/trend.ts';
import type { Summary } from '../../core/ledger/summary.ts';
import { squad } from '../ledger.ts';
import { Explained } from '../parts/explained.tsx';
import { trends } from '../player-trends.ts';
import { href } from '../route.ts';
import { figureWords } from '../words/figure-words.ts';
import { kindName } from '../words/kind-name.ts';
import { words } from '../words/words.ts';
import { DrillPart } from './drill-part.tsx';
import { LevelPart } from './level-part.tsx';
import { Span, weeksLookedAt } from './span.tsx';
import { WorkPart } from './work-part.tsx';

/** The squad: each player's trends in a word, what pairs do, and everyone's level. */
export function SquadReview({ summaries }: { summaries: Summary[] }) {
  const t = figureWords.value.review;
  const { now } = lastWeeks(summaries, weeksLookedAt.value);
  const stints = pairStints(now);
  return (
    <>
      <Players summaries={summaries} />
      <Span now={now} />
      <WorkPart stints={stints} note={t.byKindNote} />
      <LevelPart />
      <DrillPart stints={stints} />
    </>
  );
}

/** Everyone in the order of the squad, with the word for each kind of work; the dots are a touch away. */
function Players({ summaries }: { summaries: Summary[] }) {
  const t = figureWords.value.review;
  const stints = playerStints(summaries);
  const played = [...squad.value.values()].filter(({ id }) => stints.has(id));
  return (
    <section class="part" aria-labelledby="players">
      <h2 id="players">{t.players}</h2>
      <p class="small">{t.playersNote}</p>
      <ul class="review-players">
        {played.map(({ id, name }) => (
          <li key={id}>
            <a class="break" href={href('review', id)}>
              {name}
            </a>
            <Words works={trends.value?.get(id) ?? []} />
          </li>
        ))}
      </ul>
    </section>
  );
}

/** The words for a player's kinds of work, each word with the kinds that it is said of. */
function Words({ works }: { works: KindTrend[] }) {
  const { trendWords } = figureWords.value;
  return (
    <dl class="review-words">
      {trendWordsInOrder.map((word) => {
        const kinds = works.filter(({ trend }) => trend.word === word).map(kindName);
        return (
          kinds.length > 0 && (
            <div key={word}>
              <dt>
                <Explained of="trend">{trendWords[word]}</Explained>
              </dt>
              <dd class="small">{words.value.list(kinds)}</dd>
            </div>
          )
        );
      })}
    </dl>
  );
}
