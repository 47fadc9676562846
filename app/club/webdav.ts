import { readMultistatus, strongTag } from '../../core/exchange/multistatus.ts';
import { type Place, PlaceError, type PlaceFault } from './place.ts';

/** A folder on the server that the app comes from, and who asks for it. */
export interface Account {
  /** Where it is, from the app's own address: `club/`. */
  path: string;
  user: string;
  password: string;
}

/** So long a server takes the tag of what was just written for a weak one, which `If-Match` never meets. */
const WEAK_MS = 1_100;
/** A server that says nothing for so long is not there. */
const PATIENCE_MS = 30_000;
/** An answer to PROPFIND that is longer lists more than any club has. */
const LONGEST_LIST = 2_000_000;

const FAULTS: Readonly<Record<number, PlaceFault>> = {
  401: 'refused',
  403: 'refused',
  404: 'missing',
  405: 'missing',
  409: 'missing',
  413: 'full',
  507: 'full',
};

/** The whole address of a folder; undefined where it would be on another server. */
export function folderAt(path: string): URL | undefined {
  try {
    const url = new URL(path.endsWith('/') ? path : `${path}/`, document.baseURI);
    return url.origin === location.origin ? url : undefined;
  } catch {
    return undefined;
  }
}

/**
 * A folder on a web server by WebDAV (RFC 4918): PROPFIND lists it, GET asks only for what has
 * changed, PUT writes only over what is known.
 *
 * @throws PlaceError from every method
 */
export function webdav({ path, user, password }: Account): Place {
  const letters = new TextEncoder().encode(`${user}:${password}`);
  const authorization = `Basic ${btoa(String.fromCharCode(...letters))}`;

  const ask = async (name: string, init: RequestInit & { headers?: Record<string, string> }) => {
    const folder = folderAt(path);
    if (!folder) throw new PlaceError('elsewhere');
    let response: Response;
    try {
      response = await fetch(new URL(name, folder), {
        ...init,
        headers: { ...init.headers, ...(user !== '' && { authorization }) },
        // The browser must not ask for a password by itself, nor follow where the server points.
        credentials: 'omit',
        redirect: 'manual',
        cache: 'no-store',
        signal: AbortSignal.timeout(PATIENCE_MS),
      });
    } catch {
      throw new PlaceError('unreachable');
    }
    if (response.type === 'opaqueredirect') throw new PlaceError('elsewhere');
    const fault = FAULTS[response.status] ?? (response.status >= 500 ? 'unreachable' : undefined);
    if (fault) throw new PlaceError(fault);
    return response;
  };

  const list: Place['list'] = async () => {
    const response = await ask('', {
      method: 'PROPFIND',
      headers: { depth: '1', 'content-type': 'application/xml' },
      body: '<?xml version="1.0"?><propfind xmlns="DAV:"><prop><getetag/><resourcetype/></prop></propfind>',
    });
    const text = response.status === 207 ? await response.text() : '';
    const listed = text.length <= LONGEST_LIST ? readMultistatus(text) : undefined;
    if (!listed) throw new PlaceError('strange');
    const files = new Map<string, string>();
    for (const { href, tag = '' } of listed) {
      const name = decode(href.split('/').at(-1) ?? '');
      if (name !== undefined) files.set(name, tag);
    }
    return files;
  };

  const tagOf = (response: Response) => strongTag(response.headers.get('etag') ?? '');

  return {
    list,
    async read(name, known) {
      const response = await ask(encodeURIComponent(name), {
        headers: known ? { 'if-none-match': known } : {},
      });
      if (response.status === 304) return undefined;
      if (response.status !== 200) throw new PlaceError('strange');
      try {
        return { file: await response.blob(), tag: tagOf(response) };
      } catch {
        throw new PlaceError('unreachable'); // The connection was lost in the middle.
      }
    },
    async write(name, file, known) {
      const put = () =>
        ask(encodeURIComponent(name), {
          method: 'PUT',
          headers: {
            'content-type': 'text/plain',
            ...(known === undefined ? { 'if-none-match': '*' } : { 'if-match': known }),
          },
          body: file,
        });
      let response = await put();
      if (response.status === 412 && known && (await list()).get(name) === known) {
        // It is as we left it, only too lately for the server to be sure of it.
        await new Promise((resolve) => setTimeout(resolve, WEAK_MS));
        response = await put();
      }
      if (response.status === 412) return 'changed';
      if (![200, 201, 204].includes(response.status)) throw new PlaceError('strange');
      // Few servers tell the new tag in their answer.
      return { tag: tagOf(response) || ((await list()).get(name) ?? '') };
    },
  };
}

function decode(name: string): string | undefined {
  try {
    return decodeURIComponent(name);
  } catch {
    return undefined;
  }
}
