import type { AllTouches } from '../../core/figures/all-touches.ts';
import type { OwnDayTold } from '../../core/figures/own-day-told.ts';
import { drillName } from '../words/drill-text.ts';
import { lookWords } from '../words/look-words.ts';
import { madeIn } from './own-picture.tsx';

/** The day in three sentences: what went well, the balls hit, and what to reach for next time. */
export function OwnSentences({
  told: { well, goal },
  touches: { all, counted },
}: {
  told: OwnDayTold;
  touches: AllTouches;
}) {
  const t = lookWords.value.player;
  return (
    <div class="own-sentences">
      <p>{well ? saidWell(well) : t.played}</p>
      <p class="own-balls">{all ? t.balls(all.touches) : t.ballsAtLeast(counted)}</p>
      {goal && <p>{t.goal(drillName(goal.work.terms), madeIn(goal.work, goal.sets))}</p>}
    </div>
  );
}

function saidWell({ work, why }: NonNullable<OwnDayTold['well']>): string {
  const t = lookWords.value.player;
  const [drill, made] = [drillName(work.terms), madeIn(work, work.sets)];
  return why === 'usual' ? t.well.usual(drill, made, work.usual ?? 0) : t.well[why](drill, made);
}
