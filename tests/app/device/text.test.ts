import { expect, test } from 'vitest';
import { decodeText } from '../../../app/device/text.ts';

const NAMES = 'name\nZoé\n李\n😀\n';
const utf8 = (text: string) => new TextEncoder().encode(text);
const utf16 = (text: string) => new Uint8Array(Buffer.from(text, 'utf16le'));
const swapped = (text: string) => new Uint8Array(Buffer.from(text, 'utf16le').swap16());

test('UTF-8 is read, its byte order mark dropped', () => {
  expect(decodeText(utf8(NAMES))).toEqual({ text: NAMES, guessed: false });
  expect(decodeText(utf8(`\uFEFF${NAMES}`))).toEqual({ text: NAMES, guessed: false });
});

test('UTF-16 of either byte order is read by its mark', () => {
  expect(decodeText(utf16(`\uFEFF${NAMES}`))).toEqual({ text: NAMES, guessed: false });
  expect(decodeText(swapped(`\uFEFF${NAMES}`))).toEqual({ text: NAMES, guessed: false });
});

test('no bytes are an empty text', () => {
  expect(decodeText(new Uint8Array())).toEqual({ text: '', guessed: false });
});

const bytes = (...given: (string | number)[]) =>
  new Uint8Array(
    given.flatMap((each) => (typeof each === 'number' ? each : [...Buffer.from(each)])),
  );

// é is E9 and ï EF (https://encoding.spec.whatwg.org/index-windows-1252.txt). For 80 to 9F Node 20 has
// another table: tests/browser/exchange.test.ts reads those letters.
test('a list that an older spreadsheet saved in Windows-1252 is read, and said to be a guess', () => {
  const file = bytes('name\r\nZo', 0xe9, '\r\nMa', 0xef, '\r\n');
  expect(decodeText(file)).toEqual({ text: 'name\r\nZoé\r\nMaï\r\n', guessed: true });
});

test('bytes that Windows-1252 has no letter for are no text', () => {
  for (const none of [0x81, 0x8d, 0x8f, 0x90, 0x9d]) {
    expect(decodeText(bytes('Zo', 0xe9, none))).toBeUndefined();
  }
});

test('UTF-16 without its mark, or cut in the middle of a letter, is not read', () => {
  expect(decodeText(utf16('name'))).toBeUndefined();
  expect(decodeText(utf16('\uFEFFname').slice(0, -1))).toBeUndefined();
});

test('a picture is not a text', () => {
  expect(decodeText(new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]))).toBe(
    undefined,
  );
});
