import { type ChildProcess, execFileSync, spawn, spawnSync } from 'node:child_process';
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { createServer, type Server } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { putIn } from '../debian.ts';
import { DIST } from './served.ts';

const MODULES = '/usr/lib/apache2/modules';
const WANTED = [
  ...['mpm_event', 'authn_core', 'authn_file', 'authz_core', 'authz_user', 'auth_basic', 'alias'],
  ...['mime', 'dir', 'env', 'dav', 'dav_fs'],
];

export const USER = 'club';
export const PASSWORD = 'two short words';

/** Whether Debian's Apache is here, or could be put in; root only, for it gives its files away. */
export const hasApache = (): boolean =>
  process.getuid?.() === 0 &&
  (existsSync(`${MODULES}/mod_dav_fs.so`) || putIn(['apache2', 'apache2-utils'])) &&
  existsSync(`${MODULES}/mod_dav_fs.so`);

/** A club's web server: the app, and beside it a folder by WebDAV, as the README sets it up. */
export class Apache {
  #process: ChildProcess | undefined;
  /** Another server, to which this one would send whoever asks for `elsewhere/`. */
  readonly #elsewhere = createServer((socket) => {
    this.askedElsewhere += 1;
    socket.destroy();
  });
  #elsewherePort = 0;
  /** How often that one was asked for anything. */
  askedElsewhere = 0;

  private constructor(
    readonly root: string,
    readonly port: number,
  ) {}

  static async start(): Promise<Apache> {
    const root = mkdtempSync(join(tmpdir(), 'rally-ledger-apache-'));
    chmodSync(root, 0o755);
    const apache = new Apache(root, await freePort());
    apache.#elsewherePort = await listen(apache.#elsewhere);
    apache.#setUp();
    await apache.run();
    return apache;
  }

  get address(): string {
    return `http://localhost:${this.port}/`;
  }

  /** The folder that the phones share. */
  get club(): string {
    return join(this.root, 'site/club');
  }

  #setUp(): void {
    const { root } = this;
    cpSync(DIST, join(root, 'site'), { recursive: true });
    mkdirSync(this.club);
    mkdirSync(join(root, 'state'));
    execFileSync('htpasswd', ['-cb', join(root, 'club.htpasswd'), USER, PASSWORD], {
      stdio: 'ignore',
    });
    const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
    const [, lines = ''] = /```apache\n([\s\S]*?)```/.exec(readme) ?? [];
    const told = lines
      .replaceAll('/var/lib/apache2/', `${root}/state/`)
      .replaceAll('/etc/apache2/', `${root}/`)
      .replaceAll('/var/www/rally-ledger/', `${root}/site/`);
    writeFileSync(
      join(root, 'apache.conf'),
      `${WANTED.map((name) => `LoadModule ${name}_module ${MODULES}/mod_${name}.so`).join('\n')}
ServerRoot ${root}
ServerName localhost
Listen 127.0.0.1:${this.port}
User www-data
Group www-data
PidFile ${root}/apache.pid
ErrorLog ${root}/error.log
TypesConfig /etc/mime.types
DocumentRoot ${root}/site
DirectoryIndex index.html
Redirect /elsewhere/ http://127.0.0.1:${this.#elsewherePort}/
<Directory ${root}/site>
  Require all granted
</Directory>
${told}`,
    );
    execFileSync('chown', ['-R', 'www-data:', this.club, join(root, 'state')]);
  }

  async run(): Promise<void> {
    this.#process = spawn('/usr/sbin/apache2', ['-f', join(this.root, 'apache.conf'), '-X'], {
      stdio: 'ignore',
      detached: true,
    });
    for (;;) {
      const answers = await fetch(this.address).then(
        ({ ok }) => ok,
        () => false,
      );
      if (answers) return;
      if (this.#process.exitCode !== null) {
        throw new Error(readFileSync(join(this.root, 'error.log'), 'utf8'));
      }
    }
  }

  /** Ends it in the midst of whatever it does. */
  async kill(): Promise<void> {
    const { pid } = this.#process ?? {};
    if (pid === undefined) return;
    const ended = new Promise((resolve) => this.#process?.once('exit', resolve));
    process.kill(-pid, 'SIGKILL');
    await ended;
    rmSync(join(this.root, 'apache.pid'), { force: true });
  }

  /** Gives the shared folder a disk of its own, of so many bytes; false where that is not allowed. */
  smallDisk(bytes: number): boolean {
    const { status } = spawnSync('mount', [
      '-t',
      'tmpfs',
      '-o',
      `size=${bytes}`,
      'club',
      this.club,
    ]);
    if (status === 0) execFileSync('chown', ['www-data:', this.club]);
    return status === 0;
  }

  async discard(): Promise<void> {
    await this.kill();
    this.#elsewhere.close();
    spawnSync('umount', ['-l', this.club]);
    rmSync(this.root, { recursive: true, force: true });
  }
}

const listen = (server: Server): Promise<number> =>
  new Promise((resolve) => {
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      resolve(typeof address === 'object' && address ? address.port : 0);
    });
  });

async function freePort(): Promise<number> {
  const server = createServer();
  const port = await listen(server);
  await new Promise((resolve) => server.close(resolve));
  return port;
}
