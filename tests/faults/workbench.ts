/*
 * The app's own parts that deal with files and with the database, for a page of the tests to put
 * on the bench: the fuzz and the tests of the store run in a browser, as the parts do.
 */

import { clear, del, get, set, update } from 'idb-keyval';
import { makeBackup, practiceFile } from '../../app/device/backup-file.ts';
import { durableStore, OBJECT_STORE } from '../../app/device/durable-store.ts';
import { readBackup } from '../../app/device/read-backup.ts';
import { Store } from '../../app/device/store.ts';
import { removeDamaged, take } from '../../app/device/take.ts';
import { decodeText } from '../../app/device/text.ts';
import { readRoster } from '../../core/exchange/roster.ts';

const workbench = {
  clear,
  decodeText,
  del,
  durableStore,
  get,
  makeBackup,
  OBJECT_STORE,
  practiceFile,
  readBackup,
  readRoster,
  removeDamaged,
  set,
  Store,
  take,
  update,
};
export type Workbench = typeof workbench;

Object.assign(window, { workbench });
