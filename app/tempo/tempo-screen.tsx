import { pacesBy } from '../../core/figures/paces.ts';
import { REFEED_MISSES, refeedOf, TEMPO_HITS, tempoOf } from '../../core/round/tempo.ts';
import { library } from '../ledger.ts';
import { Button } from '../parts/button.tsx';
import { Messages } from '../parts/messages.tsx';
import { Notice } from '../parts/notice.tsx';
import { openPractice, summaries } from '../practices.ts';
import { go } from '../route.ts';
import { cardWords } from '../words/card-words.ts';
import { textOf } from '../words/drill-text.ts';
import { figureWords } from '../words/figure-words.ts';
import { words } from '../words/words.ts';
import { keepCheck } from './actions.ts';
import { CheckPart } from './check-part.tsx';
import './tempo.css';

/** Measures a drill's clock with this squad: the coach taps along, and keeps what comes of it. */
export function TempoScreen({ drill: id }: { drill: string }) {
  const t = figureWords.value.tempo;
  const drill = library.value.drills.get(id);
  const known = [...pacesBy(summaries.value).values()].at(-1)?.[id];
  return (
    <main class="page">
      <header>
        <h1 class="break">{drill ? t.of(textOf(drill).name) : t.title}</h1>
        <Button onClick={() => go('court')}>{words.value.back}</Button>
      </header>
      <Messages />
      {!drill ? (
        <p>{cardWords.value.notHere}</p>
      ) : !openPractice.value ? (
        <Notice>{t.noPractice}</Notice>
      ) : (
        <>
          <CheckPart
            title={t.tempo}
            purpose={t.tempoFor}
            how={t.tempoHow}
            known={known?.tempo}
            most={TEMPO_HITS}
            tapFor={() => t.tempoTap}
            check={tempoOf}
            onKeep={(seconds) => keepCheck('tempo-checked', id, seconds)}
          />
          <CheckPart
            title={t.refeed}
            purpose={t.refeedFor}
            how={t.refeedHow}
            known={known?.refeed}
            most={2 * REFEED_MISSES}
            tapFor={(taps) => (taps % 2 === 0 ? t.missTap : t.hitTap)}
            check={refeedOf}
            onKeep={(seconds) => keepCheck('refeed-checked', id, seconds)}
          />
        </>
      )}
    </main>
  );
}
