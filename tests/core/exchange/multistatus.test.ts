import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MOST_LISTED, readMultistatus, strongTag } from '../../../core/exchange/multistatus.ts';

/** As Debian's Apache 2.4.71 answers, in its own prefixes. */
const APACHE = `<?xml version="1.0" encoding="utf-8"?>
<D:multistatus xmlns:D="DAV:" xmlns:ns0="DAV:">
<D:response xmlns:lp1="DAV:">
<D:href>/club/</D:href>
<D:propstat><D:prop><lp1:getetag>"1000-6615245b4aea8"</lp1:getetag>
<lp1:resourcetype><D:collection/></lp1:resourcetype></D:prop>
<D:status>HTTP/1.1 200 OK</D:status></D:propstat></D:response>
<D:response xmlns:lp1="DAV:">
<D:href>/club/a%20b.txt</D:href>
<D:propstat><D:prop><lp1:getetag>W/"5-6615245b4aea8"</lp1:getetag>
<lp1:resourcetype/></D:prop>
<D:status>HTTP/1.1 200 OK</D:status></D:propstat></D:response>
</D:multistatus>`;

/** After the example of RFC 4918, section 9.1.4, with the namespace left without a prefix. */
const BARE = `<multistatus xmlns="DAV:"><response><href>http://www.example.com/container/front.html</href>
<propstat><prop><getetag>&#34;zzyzx&quot;</getetag></prop></propstat></response></multistatus>`;

describe('an answer to PROPFIND', () => {
  test('lists files with the tags that If-Match wants, and no folders', () => {
    expect(readMultistatus(APACHE)).toEqual([
      { href: '/club/a%20b.txt', tag: '"5-6615245b4aea8"' },
    ]);
  });

  test('is read whatever prefix it has, or none, and with its entities', () => {
    expect(readMultistatus(BARE)).toEqual([
      { href: 'http://www.example.com/container/front.html', tag: '"zzyzx"' },
    ]);
  });

  test('is none where a page of HTML or anything else stands in its place', () => {
    expect(readMultistatus('<!doctype html><html><body>Sign in</body></html>')).toBeUndefined();
    expect(readMultistatus('')).toBeUndefined();
  });

  test('that lists without an end is read to a bound', () => {
    const one = '<response><href>/x</href></response>';
    const endless = `<multistatus>${one.repeat(5_000)}</multistatus>`;
    expect(readMultistatus(endless)).toHaveLength(MOST_LISTED);
  });

  test('of any text is read without an error, and in time', () => {
    const part = fc.constantFrom(
      '<response>',
      '</response>',
      '<href>',
      '</href>',
      '&#x;',
      '<',
      'W/',
    );
    fc.assert(
      fc.property(fc.array(fc.oneof(part, fc.string()), { maxLength: 60 }), (parts) => {
        const listed = readMultistatus(`<multistatus>${parts.join('')}`);
        expect(Array.isArray(listed)).toBe(true);
      }),
    );
  });

  test('loses the mark of a weak tag only', () => {
    expect(strongTag('W/"a"')).toBe('"a"');
    expect(strongTag('"W/a"')).toBe('"W/a"');
  });
});
