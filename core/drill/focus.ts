import * as z from 'zod/mini';
import { Id } from '../id.ts';

/**
 * The foci that come with the program: what a coach looks for beside the count. Their words stand
 * with each language. Common practice, no source.
 */
export const focusNames = [
  'recovery',
  'stance',
  'split-step',
  'set-up',
  'height',
  'depth',
  'direction',
  'speed',
  'spin',
] as const;

const words = (least: number, longest: number) =>
  z.string().check(z.trim(), z.minLength(least), z.maxLength(longest));

/** A focus of the coach's own. */
export const Focus = z.object({
  id: Id,
  /** To be answered by yes or no after one look at one player; so short that the court screen holds it. */
  question: words(1, 40),
  /** What yes looks like. */
  yes: words(0, 160),
  /** How the player is told. */
  told: words(0, 160),
});
export type Focus = z.infer<typeof Focus>;
