import { afterEach, describe, expect, test, vi } from 'vitest';
import { askToPersist, persisted, readPersisted } from '../../../app/device/persist.ts';

afterEach(() => vi.unstubAllGlobals());

const browser = (storage: Partial<StorageManager> | undefined) =>
  vi.stubGlobal('navigator', { storage });

describe('the promise to keep the ledger', () => {
  test('is read without asking for it', async () => {
    const persist = vi.fn();
    browser({ persisted: async () => false, persist });
    await readPersisted();
    expect(persisted.value).toBe(false);
    expect(persist).not.toHaveBeenCalled();
  });

  test('is known once it was asked for', async () => {
    browser({ persist: async () => true });
    await askToPersist();
    expect(persisted.value).toBe(true);
  });

  test('is unknown where the browser has no word for it, and nothing is thrown', async () => {
    browser(undefined);
    await readPersisted();
    expect(persisted.value).toBeUndefined();
    await askToPersist();
    expect(persisted.value).toBeUndefined();
  });
});
