import { watchersOf } from '../../core/figures/watchers.ts';
import type { Summary } from '../../core/ledger/summary.ts';
import { focusQuestion } from '../words/focus-question.ts';
import { qualityWords } from '../words/quality-words.ts';

/** How far two phones that watched the same practices agree on each focus. */
export function WatchersPart({ summaries }: { summaries: readonly Summary[] }) {
  const t = qualityWords.value.watchers;
  const watchers = watchersOf(summaries);
  return (
    <section class="part" aria-labelledby="watchers">
      <h2 id="watchers">{t.title}</h2>
      <p class="small">{watchers.length === 0 ? t.none : t.means}</p>
      {watchers.map(({ focus, looks, agreement, kappa, word }) => (
        <div key={focus}>
          <h3 class="break">{focusQuestion(focus)}</h3>
          <p class="number">
            {t.agreement(agreement, looks)}, {kappa === undefined ? t.noKappa : t.kappa(kappa)}
          </p>
          <p>
            <b>{t.is[word]}</b>
          </p>
        </div>
      ))}
    </section>
  );
}
