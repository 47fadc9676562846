import { useId } from 'preact/hooks';
import { COURT, type CourtSize, courtSizes, lines } from '../../core/court/court.ts';
import type { Place } from '../../core/court/place.ts';
import { flight, RUN_OFF, roleNumbers, targetOf } from '../../core/drill/drill.ts';
import { type Drawn, scaledDrill, times } from './scaled-drill.ts';
import { shotNumbers } from './shot-numbers.ts';
import './court-drawing.css';

/** Metres drawn round the court to touch: the last of them is still inside the run-off. */
const MARGIN = RUN_OFF - 0.1;

/** Metres drawn round the outermost line or place where it is only looked at. */
const EDGE = 1.1;

/**
 * A drill on its court, to scale, the near side below: where each role starts (1, 2) and recovers
 * (a ring), the markers (triangles), the targets (hatched) and the ball's path, numbered in the
 * order of a sequence. Other lanes on the same court are drawn thin beside it. Of a story that is
 * told shot by shot, the flights up to the present one are drawn, the earlier ones faint.
 */
export function CourtDrawing({
  drill: set,
  others: near = [],
  size = 'full',
  label,
  step,
  chosen,
  onTouch,
}: {
  drill: Drawn;
  others?: readonly Drawn[];
  size?: CourtSize;
  label: string;
  /** The present shot of a story, from 0; left out, all of them are drawn. */
  step?: number | undefined;
  /** A place that stands out, as the one that a touch would move. */
  chosen?: Place;
  /** Told where on the court a touch fell, in metres. */
  onTouch?: (at: Place) => void;
}) {
  const id = useId();
  const court = courtSizes[size];
  // A smaller court is drawn as large as the full one, so that numbers and lines are as thick.
  const scale = COURT.length / court.length;
  const drill = scaledDrill(set, scale);
  const others = near.map((other) => scaledDrill(other, scale));
  const numbers = shotNumbers(drill, others);
  const drawn = [...[drill, ...others].flatMap(placesOf), ...numbers];
  const span = (lines: number, places: number[]) =>
    onTouch ? lines + 2 * MARGIN : 2 * (Math.max(lines / 2, ...places.map(Math.abs)) + EDGE);
  const width = span(
    scale * (court.doublesWidth ?? court.singlesWidth),
    drawn.map(({ x }) => x),
  );
  const length = span(
    COURT.length,
    drawn.map(({ y }) => y),
  );
  const isTold = (shot: number) => step === undefined || shot <= step;
  const pastIn = (shot: number) => (step !== undefined && shot < step ? ' court-past' : '');
  const targets = roleNumbers.flatMap((role) => targetOf(drill, role) ?? []);
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: who gives onTouch has fields that do the same
    <svg
      class="court-drawing"
      viewBox={`${-width / 2} ${-length / 2} ${width} ${length}`}
      role="img"
      aria-label={label}
      onClick={onTouch && ((event) => onTouch(times(placeOf(event), 1 / scale)))}
    >
      <defs>
        <pattern id={`${id}-target`} width="0.6" height="0.6" patternUnits="userSpaceOnUse">
          <path d="M0 0.6 L0.6 0" class="court-hatch" />
        </pattern>
        <marker
          id={`${id}-arrow`}
          viewBox="0 0 10 10"
          refX="9"
          refY="5"
          markerWidth="5"
          markerHeight="5"
          orient="auto"
        >
          <path d="M0 0 L10 5 L0 10 z" class="court-arrow" />
        </marker>
      </defs>
      {lines(size).map(({ kind, ends: [[x1, y1], [x2, y2]] }) => (
        <line
          key={`${kind} ${x1} ${y1}`}
          x1={scale * x1}
          y1={-scale * y1}
          x2={scale * x2}
          y2={-scale * y2}
          class={`court-line court-${kind}`}
        />
      ))}
      {others.map((other, lane) => (
        <OtherLane key={lane} drill={other} />
      ))}
      {targets.map((target) => (
        <rect
          key={target.y}
          x={target.x - target.width / 2}
          y={-target.y - target.length / 2}
          width={target.width}
          height={target.length}
          fill={`url(#${id}-target)`}
          class="court-target"
        />
      ))}
      {drill.shots.map((shot, index) => {
        if (!isTold(index)) return null;
        const { from, to } = flight(drill, shot);
        return (
          <line
            key={index}
            x1={from.x}
            y1={-from.y}
            x2={to.x}
            y2={-to.y}
            class={`court-flight court-flight-${shot.role}${pastIn(index)}`}
            marker-end={`url(#${id}-arrow)`}
          />
        );
      })}
      {drill.markers.map(({ at }, index) => (
        <MarkerShape key={index} at={at} />
      ))}
      {drill.roles.map(({ start, recover }, role) => (
        <g key={role}>
          {(recover.x !== start.x || recover.y !== start.y) && (
            <circle cx={recover.x} cy={-recover.y} r="0.75" class="court-recover" />
          )}
          <circle cx={start.x} cy={-start.y} r="0.85" class="court-start" />
          <text x={start.x} y={-start.y + 0.42} class="court-number">
            {role + 1}
          </text>
        </g>
      ))}
      {(drill.rule === 'sequence' || step !== undefined) &&
        numbers.map(
          ({ x, y }, index) =>
            isTold(index) && (
              <text key={index} x={x} y={-y + 0.4} class={`court-order${pastIn(index)}`}>
                {index + 1}
              </text>
            ),
        )}
      {chosen && (
        <path
          d={`M${scale * chosen.x - 1.3} ${-scale * chosen.y - 1.3} h2.6 v2.6 h-2.6 z`}
          class="court-chosen"
        />
      )}
    </svg>
  );
}

const placesOf = (drill: Drawn): Place[] => [
  ...drill.roles.flatMap(({ start, recover }) => [start, recover]),
  ...drill.markers.map(({ at }) => at),
];

/** What the pair in another lane needs: who starts where, the ball's path and the markers. */
function OtherLane({ drill }: { drill: Drawn }) {
  return (
    <g class="court-other">
      {drill.shots.map((shot, index) => {
        const { from, to } = flight(drill, shot);
        return (
          <line
            key={index}
            x1={from.x}
            y1={-from.y}
            x2={to.x}
            y2={-to.y}
            class={`court-flight court-flight-${shot.role}`}
          />
        );
      })}
      {drill.markers.map(({ at }, index) => (
        <MarkerShape key={index} at={at} />
      ))}
      {drill.roles.map(({ start }, role) => (
        <circle key={role} cx={start.x} cy={-start.y} r="0.6" class="court-recover" />
      ))}
    </g>
  );
}

const MarkerShape = ({ at }: { at: Place }) => (
  <path d={`M${at.x} ${-at.y - 0.5} l0.5 0.9 h-1 z`} class="court-marker" />
);

function placeOf({ clientX, clientY, currentTarget }: MouseEvent): Place {
  const toCourt = (currentTarget as SVGSVGElement).getScreenCTM()?.inverse();
  const { x, y } = new DOMPoint(clientX, clientY).matrixTransform(toCourt);
  return { x, y: -y };
}
