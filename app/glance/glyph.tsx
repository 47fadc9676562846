import type { Level } from '../../core/figures/level.ts';
import type { TrendWord } from '../../core/figures/trend.ts';
import type { LevelScale } from './level-scale.ts';

const WIDTH = 52;
const HEIGHT = 44;
const EDGE = 5;
/** Half the width of what ends a stroke. */
const SERIF = 5;

/**
 * A level as a mark at its height, on a stroke that holds it four times in five: a long stroke is
 * unsure. The mark says the direction by its form, the line across is the squad's mean.
 */
export function Glyph({
  level,
  word,
  scale,
}: {
  level: Level;
  word: TrendWord;
  scale: LevelScale;
}) {
  const height = (part: number) => HEIGHT - EDGE - (HEIGHT - 2 * EDGE) * part;
  const [low, high] = [height(scale.at(level.low)), height(scale.at(level.high))];
  const x = WIDTH / 2;
  const serif = (y: number) => `M${x - SERIF} ${y}h${2 * SERIF}`;
  return (
    <svg class="glyph" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
      <path class="glyph-mean" d={`M0 ${height(scale.middle)}H${WIDTH}`} />
      <path class="glyph-stroke" d={`M${x} ${low}V${high}${serif(low)}${serif(high)}`} />
      <Mark word={word} x={x} y={height(scale.at(level.share))} />
    </svg>
  );
}

/** The mark of a word by itself. */
export const WordMark = ({ word }: { word: TrendWord }) => (
  <svg class="word-mark" viewBox="0 0 16 16" aria-hidden="true">
    <Mark word={word} x={8} y={8} />
  </svg>
);

/** Up and down point; steady lies; what is not clear is hollow; what is too little is a dot. */
function Mark({ word, x, y }: { word: TrendWord; x: number; y: number }) {
  switch (word) {
    case 'rising':
      return <path class="mark-full" d={`M${x} ${y - 6}l7 11h-14z`} />;
    case 'falling':
      return <path class="mark-full" d={`M${x} ${y + 6}l7 -11h-14z`} />;
    case 'steady':
      return <rect class="mark-full" x={x - 8} y={y - 2.5} width={16} height={5} />;
    case 'unclear':
      return <circle class="mark-hollow" cx={x} cy={y} r={4.5} />;
    case 'too-few':
      return <circle class="mark-full" cx={x} cy={y} r={2.5} />;
  }
}
