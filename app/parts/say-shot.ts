import type { CourtSize } from '../../core/court/court.ts';
import type { Place } from '../../core/court/place.ts';
import { bounceZone, standZone, type Zone } from '../../core/court/zone.ts';
import { type Drill, flight } from '../../core/drill/drill.ts';
import { cardWords } from '../words/card-words.ts';

/**
 * A shot of a drill in words: its number, its stroke and who strikes it, from where and to where.
 *
 * @param index of the shot in the pattern, from 0
 */
export function sayShot(drill: Drill, index: number, size: CourtSize): string {
  const t = cardWords.value;
  const shot = drill.shots[index]!;
  const { from, to } = flight(drill, shot);
  const next = drill.shots[(index + 1) % drill.shots.length]!;
  const struck = flight(drill, next).from;
  // A ball that is struck where it comes to was taken in the air.
  const isInAir = struck.x === to.x && struck.y === to.y;
  return t.story.step(
    index,
    t.strokeNames[shot.stroke],
    shot.role,
    sayStand(size, from),
    isInAir ? sayStand(size, to) : sayBounce(size, to),
  );
}

function sayStand(size: CourtSize, place: Place): string {
  const zone = standZone(size, place);
  return cardWords.value.story.stands[zone.depth] + sayHand(zone);
}

function sayBounce(size: CourtSize, place: Place): string {
  const t = cardWords.value.story;
  const { depth, ...across } = bounceZone(size, place);
  if (depth !== 'box') return t.bounces[depth] + sayHand(across);
  const { hand, isWide, isNarrow } = across;
  return t.box[hand] + (isWide ? t.boxWide : isNarrow && hand !== 'centre' ? t.boxMiddle : '');
}

function sayHand({ hand, isWide }: Omit<Zone<never>, 'depth'>): string {
  const t = cardWords.value.story;
  return isWide && hand !== 'centre' ? t.wide[hand] : t.hand[hand];
}
