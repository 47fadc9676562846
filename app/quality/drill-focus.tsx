import { append, library } from '../ledger.ts';
import { qualityWords } from '../words/quality-words.ts';
import { FocusChoice } from './focus-choice.tsx';

/** What is looked at in the rounds of a drill. */
export function DrillFocus({ drill }: { drill: string }) {
  const t = qualityWords.value.focus;
  return (
    <section class="part">
      <FocusChoice
        label={t.ofDrill}
        value={library.value.focusOf.get(drill)}
        onChange={(focus) =>
          append({ kind: 'drill-focused', drill, ...(focus !== undefined && { focus }) })
        }
      />
      <p class="small">{t.ofDrillMeans}</p>
    </section>
  );
}
