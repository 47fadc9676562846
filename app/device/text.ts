/** The text of a file; `guessed` where nothing in the file says that its letters are these. */
export interface DecodedText {
  text: string;
  guessed: boolean;
}

/**
 * The text of a file, without its byte order mark: UTF-8, or UTF-16 where a mark says so. Bytes that
 * are neither are read as Windows-1252, in which older spreadsheets save: every such file is another
 * text in some other encoding as well, so a person must look at it. Undefined where it is no text.
 */
export function decodeText(bytes: Uint8Array): DecodedText | undefined {
  const text = decode(bytes, encodingOf(bytes));
  if (text !== undefined) return isText(text) ? { text, guessed: false } : undefined;
  if (encodingOf(bytes) !== 'utf-8') return undefined;
  const guess = decode(bytes, 'windows-1252');
  return guess !== undefined && isText(guess) ? { text: guess, guessed: true } : undefined;
}

function decode(bytes: Uint8Array, encoding: string): string | undefined {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

function encodingOf([first, second]: Uint8Array): string {
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  if (first === 0xfe && second === 0xff) return 'utf-16be';
  return 'utf-8';
}

/**
 * UTF-16 without its mark is valid UTF-8 with a NUL beside every letter; a picture has control
 * characters all over, and so has Windows-1252 where a byte stands for nothing in it.
 */
const isText = (text: string): boolean => !/[^\t\r\n\P{Cc}]/u.test(text);
