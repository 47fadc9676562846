import { useState } from 'preact/hooks';
import { practiceFile } from '../device/backup-file.ts';
import { today } from '../device/clock.ts';
import { type Handed, shareFile } from '../device/share.ts';
import { standing } from '../ledger.ts';
import { latestEntries } from '../practices.ts';
import { words } from '../words/words.ts';
import { Button } from './button.tsx';
import { HandedOver } from './handed-over.tsx';

/** The practice of now, out of this phone at once: another phone can go on with it. */
export function HandPractice() {
  const [handed, setHanded] = useState<Handed>();
  const name = `rally-ledger-${today()}`;
  return (
    <>
      <Button
        onClick={() =>
          void shareFile(practiceFile([...standing.value, ...latestEntries()], name)).then(
            setHanded,
          )
        }
      >
        {words.value.handPractice}
      </Button>
      <HandedOver handed={handed} name={`${name}.txt`} />
    </>
  );
}
