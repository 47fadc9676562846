import { squadPace } from '../../core/figures/change.ts';
import { lastWeeks, reviewChange } from '../../core/figures/review.ts';
import { playerStints } from '../../core/figures/stints.ts';
import type { Summary } from '../../core/ledger/summary.ts';
import { playerName } from '../parts/names.ts';
import { Trends } from '../parts/trends.tsx';
import { figureWords } from '../words/figure-words.ts';
import { ChangePart } from './change-part.tsx';
import { DrillPart } from './drill-part.tsx';
import { OwnLevelPart } from './own-level-part.tsx';
import { Span, weeksLookedAt } from './span.tsx';
import { WorkPart } from './work-part.tsx';

/** One player: the span that is looked at, how it compares with the one before, and the whole way. */
export function PlayerReview({ summaries, player }: { summaries: Summary[]; player: string }) {
  const t = figureWords.value.review;
  if (!playerStints(summaries).has(player)) return <p>{t.nothingOf(playerName(player))}</p>;
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
      <OwnLevelPart player={player} />
      <Span now={chosen.now} />
      <ChangePart changes={changes} weeks={weeks} />
      <Trends player={player} note={t.trendsNote} />
      <WorkPart stints={now.get(player) ?? []} note={t.byKindNoteOwn} />
      <DrillPart stints={now.get(player) ?? []} />
    </>
  );
}
