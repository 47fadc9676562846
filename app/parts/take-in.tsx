import { useEffect, useState } from 'preact/hooks';
import type { Brought } from '../../core/exchange/backup-reader.ts';
import { type Refusal, readBackup } from '../device/read-backup.ts';
import { WhatComes } from '../handover/what-comes.tsx';
import { deskWords } from '../words/desk-words.ts';
import { Notice } from './notice.tsx';

type Outcome = { brought: Brought } | { refusal: Refusal } | 'reading';

/**
 * A file of entries into this phone: a backup, or a practice from another phone; chosen, dropped
 * here, or `given` by the phone.
 */
export function TakeIn({ given }: { given?: File | undefined }) {
  const t = deskWords.value.settings;
  const [outcome, setOutcome] = useState<Outcome>();
  const take = async (file: File | undefined) => {
    if (!file) return;
    setOutcome('reading');
    const brought = await readBackup(file);
    setOutcome('reason' in brought ? { refusal: brought } : { brought });
  };
  useEffect(() => void take(given), [given]);
  const choose = async (field: HTMLInputElement) => {
    await take(field.files?.[0]);
    // The same file, mended, can be chosen again.
    field.value = '';
  };
  const drop = (event: DragEvent) => {
    event.preventDefault();
    void take(event.dataTransfer?.files[0]);
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping is one more way, for a mouse
    <div class="stack" onDragOver={(event) => event.preventDefault()} onDrop={drop}>
      <h3>{t.takeIn}</h3>
      <p>{t.takeInMeans}</p>
      <input
        type="file"
        aria-label={t.takeIn}
        disabled={outcome === 'reading'}
        onChange={(event) => void choose(event.currentTarget)}
      />
      <p role="status">{outcome === 'reading' && t.takingIn}</p>
      {typeof outcome === 'object' && 'brought' in outcome && (
        <WhatComes key={outcome.brought} brought={outcome.brought} />
      )}
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
    </div>
  );
}
