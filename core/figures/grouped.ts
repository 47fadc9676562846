/** The items with the same key together, in the order in which the keys first come. */
export function grouped<T>(items: readonly T[], key: (item: T) => string): T[][] {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const own = groups.get(key(item)) ?? [];
    groups.set(key(item), own);
    own.push(item);
  }
  return [...groups.values()];
}
