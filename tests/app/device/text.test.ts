import { expect, test } from 'vitest';
import { decodeText } from '../../../app/device/text.ts';

const NAMES = 'name\nZoé\n李\n😀\n';
const utf8 = (text: string) => new TextEncoder().encode(text);
const utf16 = (text: string) => new Uint8Array(Buffer.from(text, 'utf16le'));
const swapped = (text: string) => new Uint8Array(Buffer.from(text, 'utf16le').swap16());

test('UTF-8 is read, its byte order mark dropped', () => {
  expect(decodeText(utf8(NAMES))).toBe(NAMES);
  expect(decodeText(utf8(`\uFEFF${NAMES}`))).toBe(NAMES);
});

test('UTF-16 of either byte order is read by its mark', () => {
  expect(decodeText(utf16(`\uFEFF${NAMES}`))).toBe(NAMES);
  expect(decodeText(swapped(`\uFEFF${NAMES}`))).toBe(NAMES);
});

test('no bytes are an empty text', () => {
  expect(decodeText(new Uint8Array())).toBe('');
});

test('a one-byte encoding is not taken for UTF-8', () => {
  expect(decodeText(new Uint8Array(Buffer.from('name\nZoé\n', 'latin1')))).toBeUndefined();
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
