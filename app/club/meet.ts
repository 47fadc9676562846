import { signal } from '@preact/signals';
import type { Brought } from '../../core/exchange/backup-reader.ts';
import type { AnyEntry } from '../../core/ledger/entry.ts';
import { phoneOf } from '../../core/ledger/stamp.ts';
import { roundRuns } from '../actions.ts';
import { makeBackup } from '../device/backup-file.ts';
import { now } from '../device/clock.ts';
import { prefs } from '../device/prefs.ts';
import { readBackup } from '../device/read-backup.ts';
import { news } from '../device/take.ts';
import { leads } from '../device/windows.ts';
import {
  allEntries,
  packsChanged,
  practised,
  renamePhone,
  squad,
  standing,
  store,
  thisPhone,
  unsaved,
} from '../ledger.ts';
import { readHistory, summaries, takeInFile } from '../practices.ts';
import { folder } from './folder.ts';
import { type Asked, type Memory, memory, remember } from './memory.ts';
import { type Place, PlaceError, type PlaceFault } from './place.ts';
import { webdav } from './webdav.ts';

/** What is going on: at the place, waiting for a round to end, or why the last try failed. */
export const meeting = signal<'now' | 'round' | PlaceFault | undefined>(undefined);

const PREFIX = 'rally-ledger-';
const fileOf = (phone: string) => `${PREFIX}${phone}.txt`;
/** A tag that no file has: what lies there was not left so by this phone. */
const UNKNOWN = '"unknown"';

/** The phone whose file this is; undefined for whatever else lies there. */
const phoneIn = (name: string): string | undefined =>
  /^rally-ledger-([\w-]{10})\.txt$/.exec(name)?.[1];

/** A round has begun: the rest waits until it is over. */
class RoundBegan extends Error {}
const yieldToRound = () => {
  if (roundRuns()) throw new RoundBegan();
};

let going: Promise<void> | undefined;

/**
 * Meets the others at the shared place: reads what they wrote since, writes what this phone did.
 * Whatever goes wrong is told by `meeting`, and loses nothing: what was read is joined, and the own
 * file is written whole or not at all.
 *
 * @param mayAsk whether a person is there to be asked for permission
 */
export function meet(mayAsk = false): Promise<void> {
  going ??= attend(mayAsk).finally(() => {
    going = undefined;
  });
  return going;
}

async function attend(mayAsk: boolean): Promise<void> {
  const known = memory.value;
  if (!known || prefs.value.demo) return; // What is invented is nobody's business.
  if (roundRuns()) {
    meeting.value = 'round';
    return;
  }
  meeting.value = 'now';
  const place = known.by === 'folder' ? folder(mayAsk) : known.account && webdav(known.account);
  try {
    if (!place) throw new PlaceError('missing');
    await readHistory();
    const files = await place.list();
    const isSame = packsChanged.value === packsThen;
    await readOthers(place, files);
    // What was read just now is in the others' files.
    if (isSame) packsThen = packsChanged.value;
    await writeOwn(place, files);
    packsThen = packsChanged.value;
    change({ met: now() });
    meeting.value = undefined;
  } catch (error) {
    meeting.value =
      error instanceof PlaceError
        ? error.fault
        : error instanceof RoundBegan
          ? 'round'
          : 'unreachable';
  }
}

function change(more: Partial<Memory>): void {
  if (memory.value) remember({ ...memory.value, ...more });
}

const isMine = (phone: string): boolean =>
  phone === thisPhone() || (memory.value?.names.includes(phone) ?? false);

async function readOthers(place: Place, files: ReadonlyMap<string, string>): Promise<void> {
  for (const [name, tag] of files) {
    const phone = phoneIn(name);
    const { tags = {}, faults = {} } = memory.value ?? {};
    if (phone === undefined || phone === thisPhone() || (tag !== '' && tags[name] === tag))
      continue;
    yieldToRound();
    const read = await place.read(name, tags[name]);
    if (!read) continue;
    const fault = await takeFile(read.file);
    const { [name]: _, ...others } = faults;
    change({
      tags: { ...memory.value?.tags, [name]: read.tag || tag },
      faults: fault === undefined ? others : { ...others, [name]: fault },
    });
  }
}

/** Takes a file in; tells why it cannot be taken. What erases something here waits for the coach. */
async function takeFile(file: Blob): Promise<string | undefined> {
  const brought = await readBackup(file);
  if ('reason' in brought) return brought.reason;
  const [standing, asked] = withoutErasures(brought);
  const before = memory.value?.asked ?? [];
  const fresh = asked.filter(({ of }) => !before.some((each) => each.of === of));
  if (fresh.length > 0) change({ asked: [...before, ...fresh] });
  await takeInFile(standing, brought.practices);
  return undefined;
}

function withoutErasures({ standing }: Brought): [AnyEntry[], Asked[]] {
  const practices = new Set(summaries.value.map(({ practice }) => practice));
  const asked: Asked[] = [];
  const taken = standing.filter(({ kind, player, erased }) => {
    if (kind === 'player-erased' && squad.value.has(String(player))) {
      asked.push({ kind, of: String(player) });
    } else if (kind === 'practice-erased' && practices.has(String(erased))) {
      asked.push({ kind, of: String(erased) });
    } else return true;
    return false;
  });
  return [taken, asked];
}

async function writeOwn(
  place: Place,
  files: ReadonlyMap<string, string>,
  again = false,
): Promise<void> {
  if (unsaved.value.size > 0) return; // First it must be safe here.
  yieldToRound();
  const others = new Set([...files.keys()].flatMap((name) => phoneIn(name) ?? []));
  const name = fileOf(thisPhone());
  const isThere = files.has(name);
  const { written = '', tags = {} } = memory.value ?? {};
  // Also where nothing was there yet, and nothing was written.
  const isAsLeft = files.get(name) === tags[name];
  if (isAsLeft && !mayHaveMore(others)) return;
  const own = await ownEntries(others);
  change({ looked: now(), phones: [...others] });
  const last = own.reduce((last, entry) => later(last, entry.id), '');
  if (own.length === 0 || (isAsLeft && last === written)) return;
  async function* all() {
    yield own;
  }
  const { file } = await makeBackup(all(), 'own');
  yieldToRound();
  const done = await place.write(name, file, isThere ? tags[name] || UNKNOWN : undefined);
  // A place whose tags do not hold would be asked for ever.
  if (done === 'changed' && again) throw new PlaceError('strange');
  if (done === 'changed') await sortOut(place, name);
  else
    change({ written: last, tags: { ...tags, [name]: done.tag }, names: namesWith(thisPhone()) });
}

/** The history takes a while to look through: where nothing hints at more, once a day is enough. */
const LOOK_MS = 86_400_000;
/** What had been packed or imported when the place was met last. */
let packsThen = packsChanged.peek();

/** Whether this phone may have more to tell than what is in its file. */
function mayHaveMore(others: ReadonlySet<string>): boolean {
  const { written = '', looked = 0, phones = [] } = memory.value ?? {};
  const tells = ({ id }: AnyEntry) =>
    id > written && (isMine(phoneOf(id)) || !others.has(phoneOf(id)));
  return (
    Math.abs(now() - looked) > LOOK_MS ||
    packsChanged.value !== packsThen ||
    phones.some((phone) => !others.has(phone)) ||
    [...standing.value, ...practised.value].some(tells)
  );
}

const later = (one: string, other: string) => (other > one ? other : one);

const namesWith = (name: string): string[] => [...new Set([...(memory.value?.names ?? []), name])];

/**
 * What this phone has to tell: what it wrote itself, and what came to it from phones that are not
 * there themselves.
 */
async function ownEntries(others: ReadonlySet<string>): Promise<AnyEntry[]> {
  const own: AnyEntry[] = [];
  for await (const portion of allEntries()) {
    yieldToRound();
    for (const entry of portion) {
      const phone = phoneOf(entry.id);
      if (isMine(phone) || !others.has(phone)) own.push(entry);
    }
  }
  return own;
}

/**
 * The own file is not as this phone left it. Where all that is in it is known here, an answer was
 * lost on the way, and it is written over; else another device writes the same file, a copy of this
 * phone: its entries are taken in, and this phone goes on under a new name, with a file of its own.
 */
async function sortOut(place: Place, name: string): Promise<void> {
  const read = await place.read(name);
  if (!read) return;
  const brought = await readBackup(read.file);
  const isOurs =
    'reason' in brought || (await news(store, brought.standing, brought.practices)).length === 0;
  change({ tags: { ...memory.value?.tags, [name]: read.tag } });
  if (!isOurs) {
    await takeFile(read.file);
    change({
      names: namesWith(thisPhone()),
      faults: { ...memory.value?.faults, [name]: 'shared' },
    });
    await renamePhone();
  }
  await writeOwn(place, await place.list(), true);
}

/** Between two tries while the app is open and seen. */
const AGAIN_MS = 300_000;

let keeps = false;

/** Meets whenever it may: now, every few minutes, as a network comes, as a practice is over. */
export function keepMeeting(): void {
  if (keeps) return;
  keeps = true;
  const look = () => {
    if (leads.value && document.visibilityState === 'visible' && !roundRuns()) void meet();
  };
  look();
  setInterval(look, AGAIN_MS);
  addEventListener('online', look);
  document.addEventListener('visibilitychange', look);
}
