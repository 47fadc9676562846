/**
 * The text of a file: UTF-8, or UTF-16 where a byte order mark says so, without the mark.
 * Undefined where it is neither, or not a text at all.
 */
export function decodeText(bytes: Uint8Array): string | undefined {
  try {
    const text = new TextDecoder(encodingOf(bytes), { fatal: true }).decode(bytes);
    // UTF-16 without its mark is valid UTF-8, with a NUL beside every letter; no text has one.
    return text.includes('\0') ? undefined : text;
  } catch {
    return undefined;
  }
}

function encodingOf([first, second]: Uint8Array): string {
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  if (first === 0xfe && second === 0xff) return 'utf-16be';
  return 'utf-8';
}
