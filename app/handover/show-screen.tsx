import { useMemo, useState } from 'preact/hooks';
import { endingLine, entryLine, headingLine } from '../../core/exchange/backup.ts';
import { toFrames } from '../../core/exchange/frames.ts';
import type { AnyEntry } from '../../core/ledger/entry.ts';
import { phoneOf } from '../../core/ledger/stamp.ts';
import { standing, thisPhone } from '../ledger.ts';
import { Notice } from '../parts/notice.tsx';
import { latestEntries } from '../practices.ts';
import { Choice } from '../settings/choice.tsx';
import { handoverWords } from '../words/handover-words.ts';
import { Code } from './code.tsx';
import { pack } from './packing.ts';
import '../settings/settings.css';
import { Page } from './page.tsx';

const shares = ['whole', 'own'] as const;
type Share = (typeof shares)[number];

/** The practice of now as codes for another phone's camera. */
export function ShowScreen() {
  const t = handoverWords.value.show;
  const [share, setShare] = useState<Share>('whole');
  const entries = [...standing.value, ...latestEntries()];
  // What was shown once goes on as it is while it is being read.
  const [shown, setShown] = useState({ share, entries });
  const choose = (share: Share) => {
    setShare(share);
    setShown({ share, entries });
  };
  const frames = useMemo(() => framesOf(shown.entries, shown.share), [shown]);
  return (
    <Page title={t.title}>
      {frames === undefined ? (
        <Notice as="fault">{t.tooLong}</Notice>
      ) : (
        <>
          <Code frames={frames} label={t.label} />
          <p>{t.how}</p>
          <p class="small">{t.holds}</p>
        </>
      )}
      <Choice legend={t.share} values={shares} value={share} names={t.shares} onChange={choose} />
    </Page>
  );
}

function framesOf(entries: readonly AnyEntry[], share: Share): string[] | undefined {
  const given =
    share === 'whole' ? entries : entries.filter(({ id }) => phoneOf(id) === thisPhone());
  const text = [headingLine(), ...given.map(entryLine), endingLine(given.length)].join('');
  return toFrames(pack(text));
}
