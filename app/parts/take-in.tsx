import { useState } from 'preact/hooks';
import { type Refusal, readBackup } from '../device/read-backup.ts';
import { takeInFile } from '../practices.ts';
import { deskWords } from '../words/desk-words.ts';
import { Notice } from './notice.tsx';

type Outcome = { taken: number } | { refusal: Refusal } | 'reading' | 'failed';

/** A file of entries into this phone: a backup, or a practice from another phone. */
export function TakeIn() {
  const t = deskWords.value.settings;
  const [outcome, setOutcome] = useState<Outcome>();
  const choose = async (field: HTMLInputElement) => {
    const file = field.files?.[0];
    if (!file) return;
    setOutcome('reading');
    const brought = await readBackup(file);
    // The same file, mended, can be chosen again.
    field.value = '';
    if ('reason' in brought) {
      setOutcome({ refusal: brought });
      return;
    }
    try {
      setOutcome({ taken: await takeInFile(brought.standing, brought.practices) });
    } catch {
      setOutcome('failed');
    }
  };
  return (
    <>
      <h3>{t.takeIn}</h3>
      <p>{t.takeInMeans}</p>
      <input
        type="file"
        aria-label={t.takeIn}
        disabled={outcome === 'reading'}
        onChange={(event) => void choose(event.currentTarget)}
      />
      <p role="status">
        {outcome === 'reading' && t.takingIn}
        {typeof outcome === 'object' && 'taken' in outcome && t.tookIn(outcome.taken)}
      </p>
      {outcome === 'failed' && <Notice as="fault">{t.notTakenIn}</Notice>}
      {typeof outcome === 'object' && 'refusal' in outcome && (
        <Notice as="fault">
          {t.refused(
            outcome.refusal.line,
            t.refusals[outcome.refusal.reason](
              ('field' in outcome.refusal && outcome.refusal.field) || '',
            ),
          )}
        </Notice>
      )}
    </>
  );
}
