/** The channels on which the pages of one phone hear each other (Broadcast Channel API). */
export class Channels {
  readonly #open = new Set<{
    page: object;
    name: string;
    onmessage: ((event: { data: unknown }) => void) | null;
  }>();

  /** What a page has as `BroadcastChannel`. */
  of(page: object): typeof BroadcastChannel {
    const open = this.#open;
    class Channel {
      onmessage: ((event: { data: unknown }) => void) | null = null;
      readonly page = page;
      constructor(readonly name: string) {
        open.add(this);
      }
      postMessage(told: unknown): void {
        const data = structuredClone(told);
        for (const other of open) {
          if (other === this || other.name !== this.name) continue;
          setImmediate(() => open.has(other) && other.onmessage?.({ data: structuredClone(data) }));
        }
      }
      close(): void {
        open.delete(this);
      }
    }
    return Channel as unknown as typeof BroadcastChannel;
  }

  leave(page: object): void {
    for (const channel of this.#open) if (channel.page === page) this.#open.delete(channel);
  }
}
