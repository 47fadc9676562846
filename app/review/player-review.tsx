import { squadPace } from '../../core/figures/change.ts';
import { lastWeeks, reviewChange, reviewWork } from '../../core/figures/review.ts';
import { playerStints } from '../../core/figures/stints.ts';
import type { Summary } from '../../core/ledger/summary.ts';
import { playerName } from '../parts/names.ts';
import { TrendPicture } from '../parts/trend-picture.tsx';
import { figureWords } from '../words/figure-words.ts';
import { kindName } from '../words/kind-name.ts';
import { ChangePart } from './change-part.tsx';
import { DrillPart } from './drill-part.tsx';
import { Span, weeksLookedAt } from './span.tsx';
import { WorkPart } from './work-part.tsx';

/** One player: the span that is looked at, how it compares with the one before, and the whole way. */
export function PlayerReview({ summaries, player }: { summaries: Summary[]; player: string }) {
  const t = figureWords.value.review;
  const all = playerStints(summaries).get(player);
  if (!all) return <p>{t.nothingOf(playerName(player))}</p>;
  const weeks = weeksLookedAt.value;
  const chosen = lastWeeks(summaries, weeks);
  const [now, before] = [playerStints(chosen.now), playerStints(chosen.before)];
  const changes = reviewChange(
    before.get(player) ?? [],
    now.get(player) ?? [],
    squadPace([...before.values(), ...now.values()].flat()),
  );
  return (
    <>
      <Span now={chosen.now} />
      <ChangePart changes={changes} weeks={weeks} />
      <section class="part" aria-labelledby="trends">
        <h2 id="trends">{t.trends}</h2>
        <p class="small">{t.trendsNote}</p>
        {reviewWork(all).map((work) => (
          <TrendPicture key={kindName(work)} name={kindName(work)} trend={work.trend} />
        ))}
      </section>
      <WorkPart stints={now.get(player) ?? []} note={t.byKindNoteOwn} />
      <DrillPart stints={now.get(player) ?? []} />
    </>
  );
}
