import { useState } from 'preact/hooks';
import { practiceFile } from '../device/backup-file.ts';
import { today } from '../device/clock.ts';
import { type Handed, shareFile } from '../device/share.ts';
import { practice, practiceEntries, trouble } from '../ledger.ts';
import { words } from '../words/words.ts';
import { Button } from './button.tsx';
import { HandedOver } from './handed-over.tsx';
import { Notice } from './notice.tsx';

/** Why the phone cannot save, and a way to get the practice off it at once. */
export function Trouble() {
  const t = words.value;
  const [handed, setHanded] = useState<Handed>();
  if (!trouble.value) return null;
  const name = `rally-ledger-${today()}`;
  const handOver = () => void shareFile(practiceFile(practiceEntries(), name)).then(setHanded);
  return (
    <Notice as="fault">
      {t.trouble[trouble.value]}{' '}
      {practice.value && <Button onClick={handOver}>{t.handPractice}</Button>}
      <HandedOver handed={handed} name={`${name}.txt`} />
    </Notice>
  );
}
