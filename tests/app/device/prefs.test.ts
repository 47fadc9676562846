import { afterEach, beforeEach, expect, test, vi } from 'vitest';

/** The prefs that a phone opens with, where it stored this text before. */
async function opened(stored: string | null) {
  vi.resetModules();
  vi.stubGlobal('localStorage', { getItem: () => stored, setItem: () => {} });
  return (await import('../../../app/device/prefs.ts')).prefs.value;
}

beforeEach(() => vi.resetModules());
afterEach(() => vi.unstubAllGlobals());

test('a phone that stored nothing sounds loud, clicks, says no names, and is held in the right hand', async () => {
  expect(await opened(null)).toMatchObject({
    sound: 'loud',
    click: true,
    sayPairs: false,
    hand: 'right',
    keys: true,
  });
});

test('sound that an earlier version had switched off stays off, and what was on is loud', async () => {
  expect((await opened('{"sound":false}')).sound).toBe('off');
  expect((await opened('{"sound":true}')).sound).toBe('loud');
});

test('each volume is opened as it was stored', async () => {
  for (const sound of ['off', 'quiet', 'loud']) {
    expect((await opened(JSON.stringify({ sound }))).sound).toBe(sound);
  }
});

test('a value that no version wrote falls back alone, and the others stay', async () => {
  const prefs = await opened('{"sound":"deafening","hand":"left","click":7,"theme":"dark"}');
  expect(prefs).toMatchObject({ sound: 'loud', hand: 'left', click: true, theme: 'dark' });
});

test('text that is damaged opens the app with its usual ways', async () => {
  expect((await opened('{"sound":')).sound).toBe('loud');
});
