/**
 * Bytes as the end of an address: base64 with the alphabet for addresses (RFC 4648, section 5),
 * without padding.
 */
export const toLink = (bytes: Uint8Array): string =>
  btoa(String.fromCharCode(...bytes))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replace(/=+$/, '');

/** Undefined where the text is none. */
export function fromLink(text: string): Uint8Array | undefined {
  try {
    const letters = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
    return Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
  } catch {
    return undefined;
  }
}
