import { useEffect, useRef, useState } from 'preact/hooks';
import type { BackupFault, Brought } from '../../core/exchange/backup-reader.ts';
import { FrameGatherer, type Seen } from '../../core/exchange/frames.ts';
import { type NoCamera, readCodes } from '../device/camera.ts';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import { useAwake } from '../parts/use-awake.ts';
import { go } from '../route.ts';
import { deskWords } from '../words/desk-words.ts';
import { handoverWords } from '../words/handover-words.ts';
import { unpack } from './packing.ts';
import { Page } from './page.tsx';
import { readEntries } from './read-entries.ts';
import { WhatComes } from './what-comes.tsx';
import './code.css';

/** What a whole transfer turned out to be. */
type Arrived = { brought: Brought } | { fault: BackupFault } | 'damaged' | 'large';

/** Reads the codes of another phone with the camera, until a transfer is whole. */
export function ReadScreen() {
  const t = handoverWords.value.read;
  const [arrived, setArrived] = useState<Arrived>();
  const [again, setAgain] = useState(0);
  return (
    <Page title={t.title}>
      {arrived === undefined ? (
        <Looking key={again} onArrived={setArrived} />
      ) : (
        <>
          {typeof arrived === 'object' && 'brought' in arrived ? (
            <WhatComes brought={arrived.brought} />
          ) : (
            <Notice as="fault">{faultOf(arrived)}</Notice>
          )}
          <Button
            onClick={() => {
              setArrived(undefined);
              setAgain(again + 1);
            }}
          >
            {t.another}
          </Button>
        </>
      )}
    </Page>
  );
}

function faultOf(arrived: Exclude<Arrived, { brought: Brought }>): string {
  const t = handoverWords.value.read;
  if (typeof arrived === 'string') return t.spoilt[arrived];
  const { reason, field = '' } = arrived.fault;
  return t.refused(deskWords.value.settings.refusals[reason](field));
}

function Looking({ onArrived }: { onArrived: (arrived: Arrived) => void }) {
  const t = handoverWords.value.read;
  const video = useRef<HTMLVideoElement>(null);
  const [state, setState] = useState<'starting' | 'looking' | NoCamera>('starting');
  const [seen, setSeen] = useState<Seen>();
  useAwake(true);
  useEffect(() => {
    const gatherer = new FrameGatherer();
    let stop: (() => void) | undefined;
    let gone = false;
    const saw = (text: string) => {
      const [, card] = text.split('#/handover/card/');
      if (card !== undefined) go('handover', 'card', card);
      const now = gatherer.take(text);
      if (now.as === 'whole') {
        stop?.();
        const unpacked = unpack(now.bytes);
        if (typeof unpacked === 'string') onArrived(unpacked);
        else {
          const brought = readEntries(unpacked.text);
          onArrived('reason' in brought ? { fault: brought } : { brought });
        }
      } else setSeen(now);
    };
    if (video.current) {
      void readCodes(video.current, saw).then((camera) => {
        if (typeof camera === 'string') setState(camera);
        else if (gone) camera.stop();
        else {
          stop = camera.stop;
          setState('looking');
        }
      });
    }
    return () => {
      gone = true;
      stop?.();
    };
  }, [onArrived]);
  const noCamera = state === 'none' || state === 'refused';
  return (
    <>
      <video ref={video} class="code-camera" hidden={noCamera} muted playsInline />
      {noCamera ? (
        <Notice as="fault">{t.noCamera[state]}</Notice>
      ) : (
        <>
          <p role="status">
            {state === 'starting'
              ? t.starting
              : seen === undefined
                ? t.how
                : seen.as === 'frame'
                  ? t.have(seen.have, seen.total)
                  : ''}
          </p>
          {seen?.as === 'frame' && (
            <progress
              class="code-progress"
              value={seen.have}
              max={seen.total}
              aria-label={t.title}
            />
          )}
          {seen && seen.as !== 'frame' && seen.as !== 'whole' && (
            <Notice>{t.strange[seen.as]}</Notice>
          )}
        </>
      )}
    </>
  );
}
