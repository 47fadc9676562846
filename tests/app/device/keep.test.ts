import { afterEach, describe, expect, test, vi } from 'vitest';
import { askToKeep, kept, readKept } from '../../../app/device/keep.ts';

afterEach(() => vi.unstubAllGlobals());

const browser = (storage: Partial<StorageManager> | undefined) =>
  vi.stubGlobal('navigator', { storage });

describe('the promise to keep the ledger', () => {
  test('is read without asking for it', async () => {
    const persist = vi.fn();
    browser({ persisted: async () => false, persist });
    await readKept();
    expect(kept.value).toBe(false);
    expect(persist).not.toHaveBeenCalled();
  });

  test('is known once it was asked for', async () => {
    browser({ persist: async () => true });
    await askToKeep();
    expect(kept.value).toBe(true);
  });

  test('is unknown where the browser has no word for it, and nothing is thrown', async () => {
    browser(undefined);
    await readKept();
    expect(kept.value).toBeUndefined();
    await askToKeep();
    expect(kept.value).toBeUndefined();
  });
});
