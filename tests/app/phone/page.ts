import { IDBKeyRange } from 'fake-indexeddb';
import { Window } from 'happy-dom';
import { type Random, randomFrom } from '../../../demo-data/random.ts';
import type { Channels } from './channels.ts';
import type { Locks } from './locks.ts';

/** What a page of the app shows of itself to a test. */
export type WholeApp = typeof import('./whole-app.ts');

/** What the pages of one phone share. */
export interface Shared {
  database: IDBFactory;
  prefs: Storage;
  locks: Locks;
  channels: Channels;
  random: Random;
}

/** The globals that a page has for itself, in the order in which the app's script is given them. */
const NAMES = [
  'window',
  'document',
  'location',
  'navigator',
  'localStorage',
  'addEventListener',
  'removeEventListener',
  'matchMedia',
  'scrollTo',
  'setTimeout',
  'clearTimeout',
  'setInterval',
  'clearInterval',
  'requestAnimationFrame',
  'cancelAnimationFrame',
  'indexedDB',
  'IDBKeyRange',
  'BroadcastChannel',
  'crypto',
  'Math',
  'Element',
  'AudioContext',
] as const;

const FRAME_MS = 16;

/** Compiles the app's script (see built.ts): each call of it opens the app anew. */
export const compiled = (script: string) =>
  new Function(...NAMES, script) as (...globals: unknown[]) => WholeApp;

/**
 * One window in which the app is open. It has a document and modules of its own; what phones share
 * between windows it shares. Once it is killed nothing of it happens any more.
 */
export class Page {
  readonly app: WholeApp;
  readonly window = new Window({ url: 'https://rally.test/' });
  /** Files that went to the phone's share sheet, the last one last. */
  readonly shared: File[] = [];
  #alive = true;
  #hidden = false;
  #hash = '';
  readonly #shared: Shared;
  readonly #timers = new Set<ReturnType<typeof setTimeout>>();

  constructor(open: ReturnType<typeof compiled>, shared: Shared, hash = '') {
    this.#shared = shared;
    this.#hash = hash;
    const { document } = this.window;
    document.body.innerHTML = '<div id="app"></div>';
    Object.defineProperty(document, 'visibilityState', {
      get: () => (this.#hidden ? 'hidden' : 'visible'),
    });
    const globals: Record<(typeof NAMES)[number], unknown> = {
      window: this.window,
      document,
      location: this.#location(),
      navigator: this.#navigator(),
      localStorage: shared.prefs,
      addEventListener: this.window.addEventListener.bind(this.window),
      removeEventListener: this.window.removeEventListener.bind(this.window),
      matchMedia: () => ({ matches: false, addEventListener: () => {} }),
      scrollTo: () => {},
      setTimeout: this.#timer(setTimeout),
      clearTimeout: (timer: number) => clearTimeout(timer),
      setInterval: this.#timer(setInterval),
      clearInterval: (timer: number) => clearInterval(timer),
      requestAnimationFrame: (deed: () => void) => this.#timer(setTimeout)(deed, FRAME_MS),
      cancelAnimationFrame: (timer: number) => clearTimeout(timer),
      indexedDB: this.#database(),
      IDBKeyRange,
      BroadcastChannel: shared.channels.of(this),
      crypto: {
        getRandomValues: (bytes: Uint8Array) => bytes.map(() => shared.random.below(256)),
      },
      Math: Object.assign(Object.create(Math), { random: shared.random.unit }),
      Element: this.window.Element,
      AudioContext: undefined,
    };
    this.app = open(...NAMES.map((name) => globals[name]));
  }

  /** Where everything that is seen stands. */
  get root(): Element {
    return this.window.document.getElementById('app') as unknown as Element;
  }

  get isHidden(): boolean {
    return this.#hidden;
  }

  /** The page goes out of sight, or is looked at again. */
  set isHidden(hidden: boolean) {
    if (hidden === this.#hidden) return;
    this.#hidden = hidden;
    this.window.document.dispatchEvent(new this.window.Event('visibilitychange'));
  }

  /** Nothing is heard, timed, written or asked any more, as where the phone ends the app. */
  kill(): void {
    this.#alive = false;
    for (const timer of this.#timers) clearTimeout(timer);
    this.#shared.locks.leave(this);
    this.#shared.channels.leave(this);
    for (const connection of this.#connections) connection.close();
    void this.window.happyDOM.close();
  }

  #timer(set: typeof setTimeout | typeof setInterval) {
    return (deed: (...given: unknown[]) => void, wait = 0, ...given: unknown[]) => {
      const timer = set(() => this.#alive && deed(...given), wait);
      this.#timers.add(timer);
      return timer;
    };
  }

  #location() {
    const go = (to: string) => {
      const hash = to.includes('#') && to.length > 1 ? to.slice(to.indexOf('#')) : '';
      if (hash === this.#hash) return;
      this.#hash = hash;
      this.#timer(setTimeout)(() => this.window.dispatchEvent(new this.window.Event('hashchange')));
    };
    const current = () => this.#hash;
    return {
      get hash() {
        return current();
      },
      set hash(to: string) {
        go(to);
      },
      replace: go,
    };
  }

  #navigator() {
    return {
      languages: ['en'],
      locks: this.#shared.locks.of(this),
      canShare: () => true,
      share: async ({ files = [] }: ShareData) => void this.shared.push(...files),
    };
  }

  readonly #connections: IDBDatabase[] = [];

  #database(): Pick<IDBFactory, 'open'> {
    return {
      open: (name, version) => {
        // One that a dead page asks for never answers.
        if (!this.#alive) return {} as IDBOpenDBRequest;
        const request = this.#shared.database.open(name, version);
        request.addEventListener('success', () => this.#connections.push(request.result));
        return request;
      },
    };
  }
}

export { randomFrom };
