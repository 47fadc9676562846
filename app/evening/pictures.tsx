import { Z_OF_80 } from '../../core/figures/level.ts';
import type { LinePoint } from '../../core/figures/level-line.ts';
import type { Need } from '../../core/figures/level-needs.ts';
import { FITTING_SETS } from '../../core/figures/size-fit.ts';
import type { Missed } from '../../core/planning/left-out.ts';
import { alongLine } from '../parts/along-line.ts';
import { lookWords } from '../words/look-words.ts';
import { words } from '../words/words.ts';
import './pictures.css';

/* The small pictures of the evening's findings, in units of their own: WIDTH by HEIGHT. */

const WIDTH = 72;
const HEIGHT = 60;

function Picture({ label, children }: { label: string; children: preact.ComponentChildren }) {
  return (
    <svg class="picture" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={label}>
      {children}
    </svg>
  );
}

/** A box a player, in rows of six: full where the stroke was struck lately. */
export function LeftOutPicture({ players }: { players: readonly Missed[] }) {
  const t = lookWords.value.pictures;
  const side = WIDTH / 6;
  const rows = Math.ceil(players.length / 6);
  const without = players.filter(({ overdue }) => overdue).length;
  return (
    <Picture label={t.leftOut(without, players.length)}>
      {players.map(({ player, overdue }, at) => (
        <rect
          key={player}
          class={overdue ? 'picture-hollow' : 'picture-full'}
          x={(at % 6) * side + 1.5}
          y={(HEIGHT - rows * side) / 2 + Math.floor(at / 6) * side + 1.5}
          width={side - 3}
          height={side - 3}
        />
      ))}
    </Picture>
  );
}

/** More sets than this are drawn as so many. */
const MOST_SETS = 10;

/** How many sets a round gives, as a bar beside the frame of those that suit. */
export function SizePicture({ sets }: { sets: number }) {
  const t = lookWords.value.pictures;
  const { least, most } = FITTING_SETS;
  const y = (n: number) => HEIGHT - 2 - ((HEIGHT - 4) * Math.min(n, MOST_SETS)) / MOST_SETS;
  return (
    <Picture label={t.size(sets, least, most)}>
      <rect
        class="picture-frame"
        x={8}
        y={y(most)}
        width={WIDTH - 16}
        height={y(least) - y(most)}
      />
      <rect class="picture-clay" x={WIDTH / 2 - 9} y={y(sets)} width={18} height={y(0) - y(sets)} />
      <path class="picture-line" d={`M2 ${y(0)}H${WIDTH - 2}`} />
    </Picture>
  );
}

/** Two who have not met for long. */
export function PairPicture({ names }: { names: readonly string[] }) {
  const t = lookWords.value.pictures;
  const y = HEIGHT / 2;
  return (
    <Picture label={t.pair}>
      <path class="picture-broken" d={`M28 ${y}H44`} />
      {names.slice(0, 2).map((name, at) => (
        <g key={at}>
          <circle class="picture-full" cx={at === 0 ? 15 : WIDTH - 15} cy={y} r={14} />
          <text class="picture-letter" x={at === 0 ? 15 : WIDTH - 15} y={y + 6}>
            {[...name][0]?.toLocaleUpperCase()}
          </text>
        </g>
      ))}
    </Picture>
  );
}

/** How a player stands at each kind of work: the one that lags is of clay, and lowest. */
export function NeedPicture({ need: { kind, kinds } }: { need: Need }) {
  const t = lookWords.value.pictures;
  const reach = Math.max(...kinds.map(({ mean, sd }) => Math.abs(mean) + Z_OF_80 * sd));
  const y = (logit: number) => HEIGHT / 2 - ((HEIGHT / 2 - 3) * logit) / reach;
  const step = WIDTH / (kinds.length + 1);
  return (
    <Picture label={t.need(kinds.length, words.value.families[kind])}>
      <path class="picture-thin" d={`M0 ${HEIGHT / 2}H${WIDTH}`} />
      {kinds.map((each, at) => {
        const x = (at + 1) * step;
        const is = each.kind === kind;
        return (
          <g key={each.kind}>
            <path
              class="picture-line"
              d={`M${x} ${y(each.mean - Z_OF_80 * each.sd)}V${y(each.mean + Z_OF_80 * each.sd)}`}
            />
            {is ? (
              <path class="picture-clay" d={`M${x - 7} ${y(each.mean) - 5}h14l-7 11z`} />
            ) : (
              <rect class="picture-full" x={x - 4} y={y(each.mean) - 4} width={8} height={8} />
            )}
          </g>
        );
      })}
    </Picture>
  );
}

/** A level over the weeks in its band. */
export function LinePicture({ line }: { line: readonly LinePoint[] }) {
  const look = lookWords.value;
  const [first, last] = [line[0], line.at(-1)];
  if (!first || !last) return null;
  const { band, path } = alongLine(line, WIDTH, HEIGHT);
  return (
    <Picture
      label={look.pictures.line(
        look.percent(first.share),
        look.percent(last.share),
        Math.round(first.weeksAgo),
      )}
    >
      <path class="picture-band" d={band} />
      <path class="picture-trace" d={path} />
    </Picture>
  );
}
