import type { Place } from '../../core/court/place.ts';
import type { Drill } from '../../core/drill/drill.ts';

/** What a drawing shows of a drill. */
export type Drawn = Pick<Drill, 'rule' | 'shots' | 'roles' | 'markers' | 'target' | 'perCourt'>;

/** A place, with whatever else is known of it, `by` times as far from the middle of the net. */
export const times = <P extends Place>(place: P, by: number): P => ({
  ...place,
  x: by * place.x,
  y: by * place.y,
});

/** A drill with every length multiplied. */
export function scaledDrill(drill: Drawn, by: number): Drawn {
  if (by === 1) return drill;
  const [first, second] = drill.roles;
  const role = ({ start, recover }: typeof first) => ({
    start: times(start, by),
    recover: times(recover, by),
  });
  const { target } = drill;
  return {
    ...drill,
    shots: drill.shots.map((shot) => ({
      ...shot,
      ...(shot.from && { from: times(shot.from, by) }),
      ...(shot.to && { to: times(shot.to, by) }),
    })),
    roles: [role(first), role(second)],
    markers: drill.markers.map((marker) => ({ ...marker, at: times(marker.at, by) })),
    ...(target && {
      target: { ...times(target, by), width: by * target.width, length: by * target.length },
    }),
  };
}
