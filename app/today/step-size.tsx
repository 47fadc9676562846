import { takesAdvice } from '../../core/drill/counting-rules.ts';
import type { Drill } from '../../core/drill/drill.ts';
import { type SizeAdvice, sizeAdvice } from '../../core/figures/advice.ts';
import type { Step } from '../../core/round/block.ts';
import { comingRound } from '../coming-round.ts';
import { paceNow } from '../estimates.ts';
import { levels } from '../levels.ts';
import { Button } from '../parts/button.tsx';
import { Explained } from '../parts/explained.tsx';
import { namesOf } from '../parts/names.ts';
import { figureWords } from '../words/figure-words.ts';
import { words } from '../words/words.ts';
import './step-size.css';

/**
 * The set size that would suit each of the coming pairs at a step of the block. It is never set by
 * itself: one tap takes the size of one pair, for a step has one size.
 */
export function StepSize({
  step,
  drill,
  seconds,
  onSize,
}: {
  step: Step;
  drill: Drill;
  seconds: number;
  /** Undefined for the drill's own. */
  onSize: (size: number | undefined) => void;
}) {
  const t = figureWords.value.size;
  if (!takesAdvice(drill.rule)) return null;
  const size = step.size ?? drill.size;
  const terms = { family: drill.family, drill: drill.id, rule: drill.rule };
  const advised = (comingRound.value?.pairs ?? []).map(({ letter, players }) => ({
    letter,
    names: namesOf(players),
    advice: sizeAdvice(levels.value, terms, players, seconds, paceNow(drill.id)),
  }));
  return (
    <div class="step-size">
      <p>
        {t.now(size)}{' '}
        {size !== drill.size && (
          <Button as="quiet" onClick={() => onSize(undefined)}>
            {t.own(drill.size)}
          </Button>
        )}
      </p>
      {advised.some(({ advice }) => advice) && (
        <details>
          <summary>
            {t.fit}:{' '}
            {advised.map(({ letter, advice }) => (
              <span key={letter} class="step-size-pair">
                {letter} <b class="number">{advice?.size ?? '—'}</b>
              </span>
            ))}
          </summary>
          <ul>
            {advised.map(({ letter, names, advice }) => (
              <li key={letter}>
                <Advised names={names} advice={advice} size={size} onSize={onSize} />
              </li>
            ))}
          </ul>
        </details>
      )}
    </div>
  );
}

function Advised({
  names,
  advice,
  size,
  onSize,
}: {
  names: string;
  advice: SizeAdvice | undefined;
  size: number;
  onSize: (size: number) => void;
}) {
  const t = figureWords.value.size;
  if (!advice) return <p class="break">{t.unknown(names)}</p>;
  return (
    <>
      <Explained of="size">
        <span class="break">
          {t.line(names, advice.size, advice.expected, advice.larger, advice.smaller)}
          {!advice.together && ` · ${t.apart}`}
        </span>
      </Explained>
      {advice.size !== size && (
        <Button
          aria-label={words.value.named(t.set(advice.size), names)}
          onClick={() => onSize(advice.size)}
        >
          {t.set(advice.size)}
        </Button>
      )}
    </>
  );
}
