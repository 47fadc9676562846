import * as z from 'zod/mini';

/**
 * A place on the court in metres: x along the net, y across it, (0, 0) on the ground under the
 * middle of the net. See court.ts. Twenty metres reach any fence.
 */
export const Place = z.object({
  x: z.number().check(z.minimum(-20), z.maximum(20)),
  y: z.number().check(z.minimum(-20), z.maximum(20)),
});
export type Place = z.infer<typeof Place>;
