import { useState } from 'preact/hooks';
import { textFile } from '../device/backup-file.ts';
import { today } from '../device/clock.ts';
import { type Handed, shareFile } from '../device/share.ts';
import type { Hurt } from '../device/store.ts';
import { forgetHurt, hurt } from '../ledger.ts';
import { Button } from '../parts/button.tsx';
import { HandedOver } from '../parts/handed-over.tsx';
import { hurtPlaceNames } from '../parts/hurt-places.ts';
import { deskWords } from '../words/desk-words.ts';
import { words } from '../words/words.ts';

/** What can no longer be read: out of the phone as it lies, and then, if wanted, off it. */
export function HurtPart() {
  const t = deskWords.value.settings;
  const [handed, setHanded] = useState<Handed>();
  const [sure, setSure] = useState(false);
  if (hurt.value.length === 0) return null;
  const name = `rally-ledger-hurt-${today()}`;
  const forget = () => {
    if (sure) void forgetHurt();
    setSure(!sure);
  };
  return (
    <>
      <h3>{t.hurt}</h3>
      <p>{words.value.hurt(hurt.value.length, hurtPlaceNames())}</p>
      <p>{t.hurtMeans}</p>
      <Button
        onClick={() => void shareFile(textFile(hurt.value.map(asLine), name)).then(setHanded)}
      >
        {t.handHurt}
      </Button>
      <HandedOver handed={handed} name={`${name}.txt`} />
      <Button onClick={forget}>{sure ? t.forgetSure : t.forgetHurt}</Button>
    </>
  );
}

/** A record as far as it can be written down: it may be anything. */
function asLine(hurt: Hurt): string {
  try {
    return `${JSON.stringify(hurt)}\n`;
  } catch {
    return `${JSON.stringify({ ...hurt, record: String(hurt.record) })}\n`;
  }
}
