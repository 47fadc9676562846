import { useState } from 'preact/hooks';
import type { Drill } from '../../core/drill/drill.ts';
import { lanesOn } from '../../core/drill/fit-court.ts';
import { squadSettings } from '../ledger.ts';
import { textOf } from '../words/drill-text.ts';
import { words } from '../words/words.ts';
import { CourtDrawing } from './court-drawing.tsx';
import { lazyPart } from './lazy.tsx';

const BallStory = lazyPart(() => import('./ball-story.tsx').then((file) => file.BallStory));

/** The lanes of a drill on a court of the squad's size. */
export const squadLanes = (drill: Drill): Drill[] => lanesOn(drill, squadSettings.value.size);

/**
 * The drill in its first lane on a court of the squad's size, with the other lanes beside it; with a
 * step, as far as the ball has come by that shot, from 0.
 */
export function SquadCourt({ drill, step }: { drill: Drill; step?: number | undefined }) {
  const [own = drill, ...others] = squadLanes(drill);
  return (
    <CourtDrawing
      drill={own}
      others={others}
      size={squadSettings.value.size}
      label={words.value.court.drawn(textOf(drill).name)}
      step={step}
    />
  );
}

/** The same, to be stepped through ball by ball. */
export function SteppedCourt({ drill }: { drill: Drill }) {
  const [step, setStep] = useState<number>();
  return (
    <figure class="stepped-court">
      <SquadCourt drill={drill} step={step} />
      <BallStory drill={drill} step={step} onStep={setStep} />
    </figure>
  );
}
