import { useState } from 'preact/hooks';
import { textFile } from '../device/backup-file.ts';
import { today } from '../device/clock.ts';
import { damagedLine } from '../device/damaged-line.ts';
import { type Handed, shareFile } from '../device/share.ts';
import type { Damaged } from '../device/store.ts';
import { damaged, removeDamaged } from '../ledger.ts';
import { Button } from '../parts/button.tsx';
import { damagedPlaceNames } from '../parts/damaged-places.ts';
import { HandedOver } from '../parts/handed-over.tsx';
import { Notice } from '../parts/notice.tsx';
import { deskWords } from '../words/desk-words.ts';
import { words } from '../words/words.ts';

/** What became of removing: so many of those asked for are gone, so many lie otherwise and stay. */
interface Removed {
  gone: number;
  changed: number;
}

/**
 * What can no longer be read: out of the phone as it lies, and then, if wanted, off it. What is
 * removed is what was handed over, to the letter, whatever was found or changed in the meantime;
 * without a hand-over it is what was there when it was asked.
 */
export function DamagedPart() {
  const t = deskWords.value.settings;
  const [out, setOut] = useState<readonly Damaged[]>([]);
  const [handed, setHanded] = useState<Handed>();
  const [asked, setAsked] = useState<readonly Damaged[]>();
  const [removed, setRemoved] = useState<Removed | 'failed'>();
  if (damaged.value.length === 0 && removed === undefined) return null;
  const name = `rally-ledger-damaged-${today()}`;
  const handOver = () => {
    const given = damaged.value;
    void shareFile(textFile(given.map(damagedLine), name)).then((what) => {
      setHanded(what);
      setAsked(undefined);
      if (what === 'shared' || what === 'saved') setOut(given);
    });
  };
  const inFile = new Set(out.map(damagedLine));
  const isOut = (each: Damaged) => inFile.has(damagedLine(each));
  const given = damaged.value.filter(isOut);
  const found = damaged.value.length - given.length;
  const remove = (these: readonly Damaged[]) => {
    setAsked(undefined);
    removeDamaged(these).then(
      (changed) => setRemoved({ gone: these.length - changed, changed }),
      () => setRemoved('failed'),
    );
  };
  return (
    <>
      <h3>{t.damaged}</h3>
      {damaged.value.length > 0 && (
        <>
          <p>{words.value.damaged(damaged.value.length, damagedPlaceNames())}</p>
          <p>{t.damagedMeans}</p>
          <Button onClick={handOver}>{t.handDamaged}</Button>
        </>
      )}
      <HandedOver handed={handed} name={`${name}.txt`} />
      {given.length > 0 && found > 0 && <p>{t.damagedSince(found)}</p>}
      {asked && !asked.some(isOut) && <Notice as="fault">{t.notHanded(asked.length)}</Notice>}
      {damaged.value.length > 0 &&
        (asked ? (
          <>
            <Button onClick={() => remove(asked)}>{t.removeSure}</Button>
            <Button onClick={() => setAsked(undefined)}>{words.value.cancel}</Button>
          </>
        ) : (
          <Button onClick={() => setAsked(given.length > 0 ? given : damaged.value)}>
            {given.length > 0 ? t.removeHanded(given.length) : t.removeDamaged}
          </Button>
        ))}
      {removed === 'failed' ? (
        <Notice as="fault">{t.notRemoved}</Notice>
      ) : (
        <p role="status">
          {removed && t.removed(removed.gone)}{' '}
          {removed && removed.changed > 0 && t.stayed(removed.changed)}
        </p>
      )}
    </>
  );
}
