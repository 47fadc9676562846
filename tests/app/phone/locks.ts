interface Asked {
  page: object;
  take: () => void;
  lose: () => void;
}

/** The locks that the pages of one phone share, as far as the app asks for them (Web Locks API). */
export class Locks {
  readonly #queues = new Map<string, Asked[]>();

  /** What a page has as `navigator.locks`. */
  of(page: object): Pick<LockManager, 'request'> {
    const request = (
      name: string,
      { steal = false }: LockOptions,
      hold: (lock: Lock | null) => Promise<unknown>,
    ) =>
      new Promise((resolve, reject) => {
        const queue = this.#queues.get(name) ?? [];
        this.#queues.set(name, queue);
        const asked: Asked = {
          page,
          take: () => void hold(null).then(resolve, reject),
          lose: () => reject(new DOMException('taken by another page', 'AbortError')),
        };
        if (steal) {
          const [holder] = queue.splice(0, 1, asked);
          holder?.lose();
        } else queue.push(asked);
        if (queue[0] === asked) setImmediate(asked.take);
      });
    return { request } as Pick<LockManager, 'request'>;
  }

  /** A page is gone: whoever waits for what it held gets it. */
  leave(page: object): void {
    for (const [name, queue] of this.#queues) {
      const held = queue[0]?.page === page;
      const left = queue.filter((asked) => asked.page !== page);
      this.#queues.set(name, left);
      const next = left[0];
      if (held && next) setImmediate(next.take);
    }
  }
}
