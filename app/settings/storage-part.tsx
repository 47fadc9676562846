import { useState } from 'preact/hooks';
import { makeBackup } from '../device/backup-file.ts';
import { today } from '../device/clock.ts';
import { type Handed, shareFile } from '../device/share.ts';
import { allEntries, damaged } from '../ledger.ts';
import { Button } from '../parts/button.tsx';
import { HandPractice } from '../parts/hand-practice.tsx';
import { HandedOver } from '../parts/handed-over.tsx';
import { Notice } from '../parts/notice.tsx';
import { TakeIn } from '../parts/take-in.tsx';
import { practice } from '../practices.ts';
import { deskWords } from '../words/desk-words.ts';
import { DamagedPart } from './damaged-part.tsx';

/** Everything out of this phone in one file, and such a file in. */
export function StoragePart() {
  const t = deskWords.value.settings;
  return (
    <section class="part" aria-labelledby="backup">
      <h2 id="backup">{t.backup}</h2>
      <p>{t.backupMeans}</p>
      <GiveOut />
      {practice.value && <HandPractice />}
      <TakeIn />
      <DamagedPart />
    </section>
  );
}

type Made = { file: File; entries: number };

/** Made first and handed over with a second tap: a phone's share sheet opens for nothing else. */
function GiveOut() {
  const t = deskWords.value.settings;
  const [made, setMade] = useState<Made | 'making' | 'failed'>();
  const [handed, setHanded] = useState<Handed>();
  const make = () => {
    setMade('making');
    setHanded(undefined);
    makeBackup(allEntries(), `rally-ledger-backup-${today()}`).then(setMade, () =>
      setMade('failed'),
    );
  };
  const ready = typeof made === 'object' ? made : undefined;
  return (
    <>
      {ready ? (
        <Button as="main" onClick={() => void shareFile(ready.file).then(setHanded)}>
          {t.handBackup}
        </Button>
      ) : (
        <Button disabled={made === 'making'} onClick={make}>
          {t.makeBackup}
        </Button>
      )}
      <p role="status">
        {made === 'making' && t.making}
        {ready && t.made(ready.entries, Math.ceil(ready.file.size / 1000))}{' '}
        {ready && damaged.value.length > 0 && t.withoutHurt}
      </p>
      {made === 'failed' && <Notice as="fault">{t.notMade}</Notice>}
      {ready && <HandedOver handed={handed} name={ready.file.name} />}
    </>
  );
}
