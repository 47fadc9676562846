import { signal } from '@preact/signals';
import type { Summary } from '../../core/ledger/summary.ts';
import { figureWords } from '../words/figure-words.ts';

const choices = [1, 2, 4, 8, 12] as const;

/** How many weeks up to the last practice are looked at, for the whole review. */
export const weeksLookedAt = signal<number>(4);

/** The choice of a span, and the dates of the first and the last practice in it. */
export function Span({ now }: { now: Summary[] }) {
  const f = figureWords.value;
  const t = f.review;
  const [first, last] = [now[0]?.date, now.at(-1)?.date];
  return (
    <section class="part">
      <label class="review-span">
        <span class="grow">{t.span}</span>
        <select
          value={weeksLookedAt.value}
          onChange={(event) => {
            weeksLookedAt.value = Number(event.currentTarget.value);
          }}
        >
          {choices.map((choice) => (
            <option key={choice} value={choice}>
              {t.weeks(choice)}
            </option>
          ))}
        </select>
      </label>
      {first !== undefined && last !== undefined && (
        <p class="small faint">{t.spanIs(f.shortDate(first), f.shortDate(last))}</p>
      )}
    </section>
  );
}
