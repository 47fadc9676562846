import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { copyText, shareFile } from '../../../app/device/share.ts';

const file = new File(['a,b\r\n'], 'rally-ledger-2026-W48.csv', { type: 'text/csv' });
const refusal = (name: string) => () => Promise.reject(new DOMException('', name));

/** A phone with a share sheet (or one that takes no files) and a link that downloads (or does not). */
function phone({
  share,
  link,
}: {
  share?: () => Promise<void>;
  link: { download?: string; href?: string; click(): void };
}) {
  vi.stubGlobal('navigator', {
    ...(share && { canShare: () => true, share }),
  });
  vi.stubGlobal('document', { createElement: () => link });
}

/** A browser that downloads, and what it was asked for. */
const downloads = () => ({ download: '', href: '', click: vi.fn() });

beforeEach(() => void vi.useFakeTimers());
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

test('a phone whose share sheet takes the file shares it and saves nothing', async () => {
  const link = downloads();
  const share = vi.fn(() => Promise.resolve());
  phone({ share, link });
  expect(await shareFile(file)).toBe('shared');
  expect(share).toHaveBeenCalledWith({ files: [file] });
  expect(link.click).not.toHaveBeenCalled();
});

test('a person who closes the share sheet is not given a download instead', async () => {
  const link = downloads();
  phone({ share: refusal('AbortError'), link });
  expect(await shareFile(file)).toBe('closed');
  expect(link.click).not.toHaveBeenCalled();
});

test('a share sheet that refuses leaves the file to be saved under its own name', async () => {
  const link = downloads();
  phone({ share: refusal('NotAllowedError'), link });
  expect(await shareFile(file)).toBe('saved');
  expect(link.download).toBe('rally-ledger-2026-W48.csv');
  expect(link.click).toHaveBeenCalledOnce();
});

test('the saved file stays readable for a while and is then let go', async () => {
  const link = downloads();
  phone({ link });
  await shareFile(file);
  expect(await (await fetch(link.href)).text()).toBe('a,b\r\n');
  vi.runAllTimers();
  await expect(fetch(link.href)).rejects.toThrow();
});

test('a phone that neither shares nor saves asks for the text to be shown', async () => {
  phone({ link: { click: () => {} } });
  expect(await shareFile(file)).toBe('text');
  phone({
    link: {
      download: '',
      click: () => {
        throw new Error('refused');
      },
    },
  });
  expect(await shareFile(file)).toBe('text');
});

test('a text is copied, or the refusal is told', async () => {
  const writeText = vi.fn(() => Promise.resolve());
  vi.stubGlobal('navigator', { clipboard: { writeText } });
  expect(await copyText('a,b')).toBe(true);
  expect(writeText).toHaveBeenCalledWith('a,b');
  vi.stubGlobal('navigator', { clipboard: { writeText: refusal('NotAllowedError') } });
  expect(await copyText('a,b')).toBe(false);
  vi.stubGlobal('navigator', {});
  expect(await copyText('a,b')).toBe(false);
});
