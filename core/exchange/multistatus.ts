/** One resource of a WebDAV folder. */
export interface Listed {
  /** The address, as the server gives it: escaped, and absolute or only its path. */
  href: string;
  /** The entity tag without its mark of weakness; undefined where the server gives none. */
  tag?: string;
}

/** More than any club has devices. */
export const MOST_LISTED = 1000;

const element = (name: string) =>
  new RegExp(`<(?:[\\w.-]+:)?${name}(?:\\s[^>]*)?>([\\s\\S]*?)</(?:[\\w.-]+:)?${name}\\s*>`, 'gi');

/**
 * What an answer to PROPFIND lists (RFC 4918, section 9.1 and 13), folders left out. Only two
 * elements are looked for, by their names without the prefix: a page with a strict content policy
 * has no parser for foreign XML. Undefined where the text is no such answer.
 */
export function readMultistatus(text: string): Listed[] | undefined {
  if (!/<(?:[\w.-]+:)?multistatus[\s>]/i.test(text)) return undefined;
  const listed: Listed[] = [];
  for (const [, response = ''] of text.matchAll(element('response'))) {
    const [, href] = element('href').exec(response) ?? [];
    if (href === undefined || /<(?:[\w.-]+:)?collection\s*\/?>/i.test(response)) continue;
    const [, tag] = element('getetag').exec(response) ?? [];
    listed.push({
      href: plain(href).trim(),
      ...(tag !== undefined && { tag: strongTag(plain(tag).trim()) }),
    });
    if (listed.length === MOST_LISTED) break;
  }
  return listed;
}

/**
 * The tag as `If-Match` wants it. A server marks the tag of what has just been written as weak (W/),
 * and the same tag as strong a second later.
 */
export const strongTag = (tag: string): string => tag.replace(/^W\//, '');

const ENTITIES: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
};

/** The five entities that XML has, and characters by their number. */
const plain = (text: string): string =>
  text.replace(/&(?:#(\d+)|#x([\da-f]+)|(\w+));/gi, (whole, decimal, hex, name) => {
    if (name !== undefined) return ENTITIES[String(name).toLowerCase()] ?? whole;
    const code = decimal === undefined ? Number.parseInt(hex, 16) : Number(decimal);
    return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : whole;
  });
