import { useState } from 'preact/hooks';
import { textFile } from '../device/backup-file.ts';
import { today } from '../device/clock.ts';
import { type Handed, shareFile } from '../device/share.ts';
import type { Damaged } from '../device/store.ts';
import { damaged, removeDamaged } from '../ledger.ts';
import { Button } from '../parts/button.tsx';
import { damagedPlaceNames } from '../parts/damaged-places.ts';
import { HandedOver } from '../parts/handed-over.tsx';
import { deskWords } from '../words/desk-words.ts';
import { words } from '../words/words.ts';

/** What can no longer be read: out of the phone as it lies, and then, if wanted, off it. */
export function DamagedPart() {
  const t = deskWords.value.settings;
  const [handed, setHanded] = useState<Handed>();
  const [sure, setSure] = useState(false);
  if (damaged.value.length === 0) return null;
  const name = `rally-ledger-damaged-${today()}`;
  const forget = () => {
    if (sure) void removeDamaged();
    setSure(!sure);
  };
  return (
    <>
      <h3>{t.damaged}</h3>
      <p>{words.value.damaged(damaged.value.length, damagedPlaceNames())}</p>
      <p>{t.damagedMeans}</p>
      <Button
        onClick={() => void shareFile(textFile(damaged.value.map(asLine), name)).then(setHanded)}
      >
        {t.handDamaged}
      </Button>
      <HandedOver handed={handed} name={`${name}.txt`} />
      <Button onClick={forget}>{sure ? t.forgetSure : t.removeDamaged}</Button>
    </>
  );
}

/** A record as far as it can be written down: it may be anything. */
function asLine(damaged: Damaged): string {
  try {
    return `${JSON.stringify(damaged)}\n`;
  } catch {
    return `${JSON.stringify({ ...damaged, record: String(damaged.record) })}\n`;
  }
}
