import type { WeekWork } from '../../core/figures/week-work.ts';
import { deskWords } from '../words/desk-words.ts';
import { words } from '../words/words.ts';

/** Balls hit as a painted line, with a bar across it where the usual week ends. */
export function WorkBar({ work: { balls, usual }, most }: { work: WeekWork; most: number }) {
  const t = deskWords.value.week;
  const part = (n: number) => `${(100 * n) / most}%`;
  return (
    <>
      <span class="work-bar" aria-hidden="true">
        <i class="work-done" style={{ inlineSize: part(balls) }} />
        {usual !== undefined && <i class="work-usual" style={{ insetInlineStart: part(usual) }} />}
      </span>
      <span class="work-number number">
        <span aria-hidden="true">{words.value.number(balls)}</span>
        <span class="unseen">{t.ballsBeside(balls, usual)}</span>
      </span>
    </>
  );
}
