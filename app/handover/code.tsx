import { useEffect, useRef, useState } from 'preact/hooks';
import { encode } from 'uqr';
import { useAwake } from '../parts/use-awake.ts';
import { handoverWords } from '../words/handover-words.ts';
import './code.css';

/** Frames a second: a phone's camera sees each of them more than once. */
const A_SECOND = 5;
/** Modules of white round a code (ISO/IEC 18004). */
const QUIET = 4;
/** Pixels of a module: the screen makes them larger or smaller as there is room. */
const SCALE = 8;

/** Frames as codes, one after the other and round again; one alone stands still. */
export function Code({
  frames,
  label,
  level = 'M',
}: {
  frames: readonly string[];
  label: string;
  /** How much of a code may be hidden: a link is one code, and longer than a frame. */
  level?: 'L' | 'M';
}) {
  const t = handoverWords.value.code;
  const canvas = useRef<HTMLCanvasElement>(null);
  const [at, setAt] = useState(0);
  useAwake(true);
  useEffect(() => {
    setAt(0);
    if (frames.length < 2) return;
    const turn = setInterval(() => setAt((at) => (at + 1) % frames.length), 1_000 / A_SECOND);
    return () => clearInterval(turn);
  }, [frames]);
  const frame = frames[at] ?? frames[0] ?? '';
  useEffect(() => {
    if (canvas.current) draw(canvas.current, frame, level);
  }, [frame, level]);
  return (
    <figure class="code">
      <canvas ref={canvas} role="img" aria-label={label} />
      {frames.length > 1 && <figcaption>{t.part(at + 1, frames.length)}</figcaption>}
    </figure>
  );
}

/** Dark on light in every theme: cameras look for it so. */
function draw(canvas: HTMLCanvasElement, frame: string, ecc: 'L' | 'M'): void {
  const { data, size } = encode(frame, { ecc, boostEcc: false, border: QUIET });
  canvas.width = size * SCALE;
  canvas.height = size * SCALE;
  const context = canvas.getContext('2d');
  if (!context) return;
  context.fillStyle = '#ffffff';
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.fillStyle = '#000000';
  for (const [y, row] of data.entries()) {
    for (const [x, dark] of row.entries()) {
      if (dark) context.fillRect(x * SCALE, y * SCALE, SCALE, SCALE);
    }
  }
}
