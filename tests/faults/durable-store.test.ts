import { expect, test } from './bench-page.ts';

test('says that a record is kept only once its transaction has completed, and asks for strict durability', async ({
  page,
}) => {
  const order = await page.evaluate(async () => {
    const seen: string[] = [];
    const { transaction } = IDBDatabase.prototype;
    IDBDatabase.prototype.transaction = function (...given) {
      const begun = transaction.apply(this, given);
      seen.push(begun.durability);
      begun.addEventListener('complete', () => seen.push('complete'));
      return begun;
    };
    const use = workbench.durableStore('order');
    await use('readwrite', (store) => {
      store.put('value', 'key');
    });
    seen.push('told');
    return seen;
  });
  expect(order).toEqual(['strict', 'complete', 'told']);
});

test('opens a connection that was closed anew, and the same work is done', async ({ page }) => {
  const found = await page.evaluate(async () => {
    const connections: IDBDatabase[] = [];
    const { transaction } = IDBDatabase.prototype;
    IDBDatabase.prototype.transaction = function (...given) {
      connections.push(this);
      return transaction.apply(this, given);
    };
    const use = workbench.durableStore('closed');
    for (let key = 0; key < 10; key++) {
      for (const db of connections.splice(0)) db.close();
      await use('readwrite', (store) => {
        store.put('value', key);
      });
    }
    return use('readonly', (store) => {
      const count = store.count();
      return new Promise<number>((resolve) => {
        count.onsuccess = () => resolve(count.result);
      });
    });
  });
  expect(found).toBe(10);
});

for (const name of ['InvalidStateError', 'UnknownError', 'AbortError']) {
  test(`tries work that fell with ${name} three times in all, and then gives that error`, async ({
    page,
  }) => {
    const told = await page.evaluate(async (name) => {
      let tries = 0;
      IDBDatabase.prototype.transaction = () => {
        tries += 1;
        throw new DOMException('on purpose', name);
      };
      const use = workbench.durableStore('lost');
      const error = await use('readonly', () => {}).catch((error) => error.name);
      return { tries, error };
    }, name);
    expect(told).toEqual({ tries: 3, error: name });
  });
}

test('tries work again whose transaction was aborted and gave no reason', async ({ page }) => {
  const told = await page.evaluate(async () => {
    let tries = 0;
    const use = workbench.durableStore('aborted');
    await use('readwrite', (store) => {
      tries += 1;
      store.put(tries, 'tries');
      if (tries < 3) store.transaction.abort();
    });
    return tries;
  });
  expect(told).toBe(3);
});

test('does not ask a full phone again, and says that it is full', async ({ page }) => {
  const told = await page.evaluate(async () => {
    let tries = 0;
    const use = workbench.durableStore('full');
    const error = await use('readwrite', () => {
      tries += 1;
      throw new DOMException('on purpose', 'QuotaExceededError');
    }).catch((error) => error.name);
    return { tries, error };
  });
  expect(told).toEqual({ tries: 1, error: 'QuotaExceededError' });
});

test('undoes all of a work that failed, and goes on with the next', async ({ page }) => {
  const keys = await page.evaluate(async () => {
    const use = workbench.durableStore('undone');
    const keysThere = () =>
      use('readonly', (store) => {
        const keys = store.getAllKeys();
        return new Promise<IDBValidKey[]>((resolve) => {
          keys.onsuccess = () => resolve(keys.result);
        });
      });
    await use('readwrite', (store) => {
      store.put(1, 'first');
      throw new RangeError('on purpose');
    }).catch(() => {});
    await use('readwrite', (store) => {
      store.put(2, 'second');
    });
    return keysThere();
  });
  expect(keys).toEqual(['second']);
});

test('waits for a database that does not answer no longer than it is told to', async ({ page }) => {
  const told = await page.evaluate(async () => {
    IDBFactory.prototype.open = () => ({}) as IDBOpenDBRequest;
    const use = workbench.durableStore('silent', 100);
    const started = performance.now();
    const error = await use('readonly', () => {}).catch((error) => error.name);
    return { error, waited: performance.now() - started };
  });
  expect(told.error).toBe('TimeoutError');
  expect(told.waited).toBeGreaterThanOrEqual(290);
  expect(told.waited).toBeLessThan(5_000);
});

test('uses a database that answers after all, once it does', async ({ page }) => {
  const told = await page.evaluate(async () => {
    const { open } = IDBFactory.prototype;
    IDBFactory.prototype.open = () => ({}) as IDBOpenDBRequest;
    const use = workbench.durableStore('late', 500);
    const first = await use('readonly', () => {}).catch((error) => error.name);
    IDBFactory.prototype.open = open;
    return [first, await use('readonly', () => 'there')];
  });
  expect(told).toEqual(['TimeoutError', 'there']);
});

test('makes its place in a database of the same name that somebody else has made', async ({
  page,
}) => {
  const told = await page.evaluate(async () => {
    await new Promise<void>((resolve) => {
      const request = indexedDB.open('taken');
      request.onsuccess = () => {
        request.result.close();
        resolve();
      };
    });
    return workbench.durableStore('taken')('readonly', (store) => store.name);
  });
  expect(told).toBe('records');
});

test('lets another window remove the database, and begins a new one', async ({ page }) => {
  const told = await page.evaluate(async () => {
    const use = workbench.durableStore('removed');
    await use('readwrite', (store) => {
      store.put(1, 'key');
    });
    await new Promise((resolve, reject) => {
      const request = indexedDB.deleteDatabase('removed');
      request.onsuccess = resolve;
      request.onblocked = reject;
    });
    return use('readonly', (store) => {
      const count = store.count();
      return new Promise<number>((resolve) => {
        count.onsuccess = () => resolve(count.result);
      });
    });
  });
  expect(told).toBe(0);
});

test('carries out what the key-value library writes through it, and tells when it is on the disk', async ({
  page,
}) => {
  const seen = await page.evaluate(async () => {
    const use = workbench.durableStore('library', 500);
    await workbench.update<number>('count', (before) => (before ?? 0) + 1, use);
    await workbench.update<number>('count', (before) => (before ?? 0) + 1, use);
    const kept = await workbench.get<number>('count', workbench.durableStore('library'));
    const phone = new workbench.Store('named');
    return { kept, names: [await phone.phone('first-name'), await phone.phone('other-name')] };
  });
  expect(seen).toEqual({ kept: 2, names: ['first-name', 'first-name'] });
});

test('does the work of idb-keyval’s own calls, and each ends once its transaction has completed', async ({
  page,
}) => {
  const told = await page.evaluate(async () => {
    const use = workbench.durableStore('calls');
    const seen: unknown[] = [];
    await workbench.set('one', { name: 'first' }, use);
    await workbench.set('one', { name: 'last' }, use);
    seen.push(await workbench.get('one', use));
    await workbench.del('one', use);
    seen.push(await workbench.get('one', use));
    await workbench.set('two', 2, use);
    await workbench.clear(use);
    seen.push(await workbench.get('two', use));
    return seen;
  });
  expect(told).toEqual([{ name: 'last' }, undefined, undefined]);
});
