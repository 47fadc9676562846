import { useState } from 'preact/hooks';
import { makeBackup } from '../device/backup-file.ts';
import { today } from '../device/clock.ts';
import { noteCopy } from '../device/last-copy.ts';
import { seal } from '../device/sealed.ts';
import { type Handed, shareFile } from '../device/share.ts';
import { allEntries, damaged } from '../ledger.ts';
import { Button } from '../parts/button.tsx';
import { HandPractice } from '../parts/hand-practice.tsx';
import { HandedOver } from '../parts/handed-over.tsx';
import { Notice } from '../parts/notice.tsx';
import { TakeIn } from '../parts/take-in.tsx';
import { practice } from '../practices.ts';
import { deskWords } from '../words/desk-words.ts';
import { handoverWords } from '../words/handover-words.ts';
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

/** A copy of everything, which only a passphrase opens where one is given. */
async function makeCopy(passphrase: string): Promise<Made> {
  const made = await makeBackup(allEntries(), `rally-ledger-backup-${today()}`);
  return passphrase === '' ? made : { ...made, file: await seal(made.file, passphrase) };
}

/** Made first and handed over with a second tap: a phone's share sheet opens for nothing else. */
function GiveOut() {
  const t = deskWords.value.settings;
  const [made, setMade] = useState<Made | 'making' | 'failed'>();
  const [handed, setHanded] = useState<Handed>();
  const [passphrase, setPassphrase] = useState('');
  const make = () => {
    setMade('making');
    setHanded(undefined);
    makeCopy(passphrase).then(setMade, () => setMade('failed'));
  };
  const hand = (file: File) =>
    shareFile(file).then((what) => {
      setHanded(what);
      if (what === 'shared' || what === 'saved') noteCopy(today());
    });
  const ready = typeof made === 'object' ? made : undefined;
  const c = handoverWords.value.copy;
  return (
    <>
      <label>
        {c.passphrase}
        <input
          value={passphrase}
          autocomplete="off"
          autocapitalize="none"
          spellcheck={false}
          aria-describedby="passphrase-means"
          onInput={(event) => {
            setPassphrase(event.currentTarget.value);
            setMade(undefined);
          }}
        />
      </label>
      <p id="passphrase-means" class="small">
        {c.passphraseMeans}
      </p>
      {ready ? (
        <Button as="main" onClick={() => void hand(ready.file)}>
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
