import { createStore, del, get, set } from 'idb-keyval';
import { type Place, PlaceError } from './place.ts';

interface PickerWindow {
  showDirectoryPicker?(options: { mode: 'readwrite' }): Promise<FileSystemDirectoryHandle>;
}
interface Handle extends FileSystemDirectoryHandle {
  queryPermission?(wanted: { mode: 'readwrite' }): Promise<PermissionState>;
  requestPermission?(wanted: { mode: 'readwrite' }): Promise<PermissionState>;
}

const WRITE = { mode: 'readwrite' } as const;
const KEY = 'folder';
const kept = createStore('rally-ledger-place', 'handles');

/** Whether this browser lets a page use a folder of the phone. */
export const canUseFolder = (): boolean => 'showDirectoryPicker' in window;

/** Lets a person choose the folder; false where nobody did. Call it from a tap. */
export async function chooseFolder(): Promise<boolean> {
  try {
    const chosen = await (window as PickerWindow).showDirectoryPicker?.(WRITE);
    if (chosen) await set(KEY, chosen, kept);
    return chosen !== undefined;
  } catch {
    return false;
  }
}

export const forgetFolder = (): Promise<void> => del(KEY, kept);

/**
 * A folder of this phone or computer, which any service that syncs files carries to the others.
 *
 * @param mayAsk whether a person is there to be asked for permission again
 * @throws PlaceError from every method
 */
export function folder(mayAsk: boolean): Place {
  const open = async (): Promise<Handle> => {
    const handle = await get<Handle>(KEY, kept).catch(() => undefined);
    if (!handle) throw new PlaceError('missing');
    const state = await handle.queryPermission?.(WRITE);
    const granted =
      state === undefined || state === 'granted'
        ? true
        : mayAsk && (await handle.requestPermission?.(WRITE)) === 'granted';
    if (!granted) throw new PlaceError('refused');
    return handle;
  };
  const fileIn = async (handle: Handle, name: string) =>
    (await handle.getFileHandle(name)).getFile();
  const tagOf = ({ lastModified, size }: File) => `${lastModified}-${size}`;
  return {
    list: () =>
      told(async () => {
        const files = new Map<string, string>();
        for await (const each of (await open()).values()) {
          if (each.kind === 'file') files.set(each.name, tagOf(await each.getFile()));
        }
        return files;
      }),
    read: (name, known) =>
      told(async () => {
        const file = await fileIn(await open(), name);
        return tagOf(file) === known ? undefined : { file, tag: tagOf(file) };
      }),
    write: (name, file, known) =>
      told(async () => {
        const handle = await open();
        const there = await fileIn(handle, name).catch(() => undefined);
        if ((there && tagOf(there)) !== known) return 'changed';
        // It is written aside and put in place as it is closed: never half a file.
        const writing = await (await handle.getFileHandle(name, { create: true })).createWritable();
        await writing.write(file);
        await writing.close();
        return { tag: tagOf(await fileIn(handle, name)) };
      }),
  };
}

/** What a browser throws, in the words of a place. */
async function told<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (error instanceof PlaceError) throw error;
    const name = error instanceof DOMException ? error.name : '';
    if (name === 'QuotaExceededError') throw new PlaceError('full');
    if (name === 'NotAllowedError' || name === 'NoModificationAllowedError') {
      throw new PlaceError('refused');
    }
    throw new PlaceError(name === 'NotFoundError' ? 'missing' : 'unreachable');
  }
}
