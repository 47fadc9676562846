import { useId, useState } from 'preact/hooks';
import type { Check } from '../../core/round/tempo.ts';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import { onTouch } from '../parts/on-touch.ts';
import { figureWords } from '../words/figure-words.ts';

/** One thing to measure by taps: what for and how, the pad, and what came of it, to keep or to do again. */
export function CheckPart({
  title,
  purpose,
  how,
  known,
  most,
  tapFor,
  check,
  onKeep,
}: {
  title: string;
  purpose: string;
  how: string;
  /** Seconds of an earlier check. */
  known: number | undefined;
  /** Taps of one check. */
  most: number;
  /** What the next tap is for, after so many. */
  tapFor: (taps: number) => string;
  check: (taps: readonly number[]) => Check | undefined;
  onKeep: (seconds: number) => void;
}) {
  const t = figureWords.value.tempo;
  const id = useId();
  const [taps, setTaps] = useState<readonly number[]>([]);
  const [kept, setKept] = useState(false);
  const found = check(taps);
  const again = () => {
    setTaps([]);
    setKept(false);
  };
  const tap = (event: Event) => {
    const at = event.timeStamp / 1000;
    // Two fingers at once are one tap: a gap of nothing is none.
    setTaps((before) =>
      before.length < most && at > (before.at(-1) ?? 0) ? [...before, at] : before,
    );
  };
  return (
    <section class="part" aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      <p>{purpose}</p>
      <p class="small faint">
        {known === undefined ? t.usual : t.known(figureWords.value.seconds(known))}
      </p>
      {!found && (
        <>
          <p>{how}</p>
          <button type="button" class="button tempo-pad" {...onTouch(tap)}>
            <span>{tapFor(taps.length)}</span>
            <span class="number">{t.tapped(taps.length, most)}</span>
          </button>
          {taps.length > 0 && <Button onClick={again}>{t.again}</Button>}
        </>
      )}
      <div role="status" class="stack">
        {found && 'again' in found && <Notice>{t.why[found.again]}</Notice>}
        {found && 'seconds' in found && (
          <p class="tempo-found">
            <b class="number">{figureWords.value.seconds(found.seconds)}</b>
          </p>
        )}
        {kept && <p>{t.kept}</p>}
      </div>
      {found && (
        <div class="row">
          {'seconds' in found && !kept && (
            <Button
              as="main"
              onClick={() => {
                onKeep(found.seconds);
                setKept(true);
              }}
            >
              {t.keep}
            </Button>
          )}
          <Button onClick={again}>{t.again}</Button>
        </div>
      )}
    </section>
  );
}
