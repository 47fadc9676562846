import type { Drill } from '../../core/drill/drill.ts';
import { squadSettings } from '../ledger.ts';
import { cardWords } from '../words/card-words.ts';
import { Button } from './button.tsx';
import { sayShot } from './say-shot.ts';
import { squadLanes } from './squad-court.tsx';
import './ball-story.css';

/**
 * Steps through the ball's path beside a drawing of it: one touch a shot, or the arrow keys, with
 * the shot in words. After the last one the whole path is there again.
 */
export function BallStory({
  drill,
  step,
  onStep,
}: {
  drill: Drill;
  /** The present shot, from 0; undefined where the whole path is drawn. */
  step: number | undefined;
  onStep: (step: number | undefined) => void;
}) {
  const t = cardWords.value.story;
  const [lane = drill] = squadLanes(drill);
  const { shots, rule } = lane;
  const go = (to: number) => onStep(shots[to] && to);
  const next = step === undefined ? 0 : step + 1;
  const isLast = next === shots.length;
  const isRepeated = rule !== 'sequence';
  const keys = (event: KeyboardEvent) => {
    if (event.key === 'ArrowRight') go(next);
    else if (event.key === 'ArrowLeft' && step !== undefined) go(step - 1);
    else return;
    event.preventDefault();
  };
  return (
    <figcaption class="story">
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset would draw a box and a legend */}
      <div class="story-buttons" role="group" aria-label={t.title} onKeyDown={keys}>
        {step !== undefined && (
          <Button aria-label={t.back} onClick={() => go(step - 1)}>
            ‹
          </Button>
        )}
        <Button class="grow" onClick={() => go(next)}>
          {step === undefined ? t.show : isLast ? t.whole : t.next(next)}
        </Button>
      </div>
      <p role="status">
        {step !== undefined && (
          <>
            {sayShot(lane, step, squadSettings.value.size)}
            {isLast && isRepeated && ` ${t.again}`}
          </>
        )}
      </p>
      {step !== undefined && <p class="small">{t.hands}</p>}
    </figcaption>
  );
}
