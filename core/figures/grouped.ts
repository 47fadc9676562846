/** The items with the same key together, in the order in which the keys first come. */
export function grouped<T>(items: readonly T[], key: (item: T) => string): T[][] {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const its = key(item);
    const own = groups.get(its);
    if (own) own.push(item);
    else groups.set(its, [item]);
  }
  return [...groups.values()];
}
