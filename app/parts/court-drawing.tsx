import { type CourtSize, courtSizes, lines } from '../../core/court.ts';
import { type Drill, flight } from '../../core/drill.ts';
import './court-drawing.css';

/** Metres drawn round the court. */
const MARGIN = 3.2;

/**
 * A drill on its court, to scale, the near side below: where each role starts (1, 2) and recovers
 * (a ring), the markers (triangles), the target (hatched) and the ball's path.
 */
export function CourtDrawing({
  drill,
  size = 'full',
  label,
}: {
  drill: Drill;
  size?: CourtSize;
  label: string;
}) {
  const court = courtSizes[size];
  const width = (court.doublesWidth ?? court.singlesWidth) + 2 * MARGIN;
  const length = court.length + 2 * MARGIN;
  return (
    <svg
      class="court-drawing"
      viewBox={`${-width / 2} ${-length / 2} ${width} ${length}`}
      role="img"
      aria-label={label}
    >
      <defs>
        <pattern id="target" width="0.6" height="0.6" patternUnits="userSpaceOnUse">
          <path d="M0 0.6 L0.6 0" class="court-hatch" />
        </pattern>
        <marker
          id="arrow"
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
          x1={x1}
          y1={-y1}
          x2={x2}
          y2={-y2}
          class={`court-line court-${kind}`}
        />
      ))}
      {drill.target && (
        <rect
          x={drill.target.x - drill.target.width / 2}
          y={-drill.target.y - drill.target.length / 2}
          width={drill.target.width}
          height={drill.target.length}
          class="court-target"
        />
      )}
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
            marker-end="url(#arrow)"
          />
        );
      })}
      {drill.markers.map(({ at }) => (
        <path
          key={`${at.x} ${at.y}`}
          d={`M${at.x} ${-at.y - 0.5} l0.5 0.9 h-1 z`}
          class="court-marker"
        />
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
    </svg>
  );
}
