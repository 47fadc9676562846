import type { Decrypter } from 'age-encryption';

/*
 * Copies that only a passphrase opens, in the age format (age-encryption.org/v1), so that any tool
 * for it opens them too. The library comes when it is asked for.
 */

/**
 * The work of trying one passphrase: scrypt with 2¹⁵ blocks takes a phone about a second (a server's
 * core a quarter of one), and 32 MB.
 */
const WORK = 15;
/** Other tools write 18; more would hold a phone for a minute, and its memory. */
const MOST_WORK = 18;

const LINE = 'age-encryption.org/v1\n';
const ARMOUR = '-----BEGIN AGE ENCRYPTED FILE-----';

/** Whether a file is sealed, as its first letters say. */
export async function isSealed(file: Blob): Promise<boolean> {
  const start = await file.slice(0, 200).text();
  return start.startsWith(LINE) || start.trimStart().startsWith(ARMOUR);
}

/** The file sealed with a passphrase, as text: share sheets refuse what is none. */
export async function seal(file: File, passphrase: string): Promise<File> {
  const { armor, Encrypter } = await import('age-encryption');
  const encrypter = new Encrypter();
  encrypter.setPassphrase(passphrase);
  encrypter.setScryptWorkFactor(WORK);
  const sealed = await encrypter.encrypt(new Uint8Array(await file.arrayBuffer()));
  return new File([armor.encode(sealed)], file.name.replace(/(\.txt)?(\.gz)?$/, '.age.txt'), {
    type: 'text/plain',
  });
}

/**
 * Why a sealed file stays shut. `passphrase`: it is another one, or the file's head was changed;
 * `damaged`: the file was cut or changed; `slow`: a phone would take too long to try the passphrase;
 * `key`: it is not a passphrase that opens it.
 */
export type Shut = 'passphrase' | 'damaged' | 'slow' | 'key';

/** What was sealed, or why it stays shut. */
export async function unseal(file: Blob, passphrase: string): Promise<Blob | Shut> {
  const { armor, Decrypter } = await import('age-encryption');
  let sealed: Uint8Array;
  try {
    const bytes = new Uint8Array(await file.arrayBuffer());
    const text = new TextDecoder().decode(bytes.subarray(0, 200)).trimStart();
    sealed = text.startsWith(ARMOUR) ? armor.decode(new TextDecoder().decode(bytes)) : bytes;
  } catch {
    return 'damaged';
  }
  const head = new TextDecoder('latin1').decode(sealed.subarray(0, 400));
  const [, kind, work] = /^age-encryption\.org\/v1\n-> (\S+)(?: \S+ (\d+)\n)?/.exec(head) ?? [];
  if (kind === undefined) return 'damaged';
  if (kind !== 'scrypt') return 'key';
  if (Number(work) > MOST_WORK) return 'slow';
  const decrypter = new Decrypter();
  decrypter.addPassphrase(passphrase);
  return opened(decrypter, sealed);
}

async function opened(decrypter: Decrypter, sealed: Uint8Array): Promise<Blob | Shut> {
  try {
    return new Blob([new Uint8Array(await decrypter.decrypt(sealed))]);
  } catch (error) {
    return error instanceof Error && error.message.startsWith('no identity matched')
      ? 'passphrase'
      : 'damaged';
  }
}
