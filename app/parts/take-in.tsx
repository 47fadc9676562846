import { useEffect, useState } from 'preact/hooks';
import type { Brought } from '../../core/exchange/backup-reader.ts';
import { type Refusal, readBackup } from '../device/read-backup.ts';
import { isSealed, type Shut, unseal } from '../device/sealed.ts';
import { WhatComes } from '../handover/what-comes.tsx';
import { deskWords } from '../words/desk-words.ts';
import { handoverWords } from '../words/handover-words.ts';
import { Button } from './button.tsx';
import { Notice } from './notice.tsx';

type Outcome =
  | { brought: Brought }
  | { refusal: Refusal }
  | { sealed: File; shut?: Shut }
  | 'reading';

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
    if (await isSealed(file).catch(() => false)) setOutcome({ sealed: file });
    else await read(file);
  };
  const open = async (sealed: File, passphrase: string) => {
    setOutcome('reading');
    const opened = await unseal(sealed, passphrase);
    if (typeof opened === 'string') setOutcome({ sealed, shut: opened });
    else await read(opened);
  };
  const read = async (file: Blob) => {
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
      {typeof outcome === 'object' && 'sealed' in outcome && (
        <Sealed
          shut={outcome.shut}
          onOpen={(passphrase) => void open(outcome.sealed, passphrase)}
        />
      )}
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

/** Asks for the passphrase of a copy that only one opens. */
function Sealed({
  shut,
  onOpen,
}: {
  shut: Shut | undefined;
  onOpen: (passphrase: string) => void;
}) {
  const t = handoverWords.value.copy;
  const [passphrase, setPassphrase] = useState('');
  return (
    <form
      class="stack"
      onSubmit={(event) => {
        event.preventDefault();
        onOpen(passphrase);
      }}
    >
      {shut && <Notice as="fault">{t.shut[shut]}</Notice>}
      <label>
        {t.sealed}
        <input
          value={passphrase}
          autocomplete="off"
          autocapitalize="none"
          spellcheck={false}
          onInput={(event) => setPassphrase(event.currentTarget.value)}
        />
      </label>
      <Button type="submit" disabled={passphrase === ''}>
        {t.open}
      </Button>
    </form>
  );
}
