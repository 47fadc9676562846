import { existsSync, readFileSync, statSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The app as it was built. */
export const DIST = process.env.DIST ?? fileURLToPath(new URL('../../dist', import.meta.url));

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webmanifest': 'application/manifest+json',
};

/** A static host like any other, whose folder can be changed for a newer one while it runs. */
export class Host {
  readonly #server: Server;
  #folder: string;

  private constructor(folder: string, server: Server) {
    this.#folder = folder;
    this.#server = server;
  }

  static async of(folder = DIST): Promise<Host> {
    if (!existsSync(folder)) throw new Error(`${folder} is not there: build the app first`);
    const server = createServer((request, response) => {
      const path = normalize(new URL(request.url ?? '/', 'http://localhost').pathname);
      const file = join(host.#folder, path.endsWith('/') ? `${path}index.html` : path);
      if (!existsSync(file) || !statSync(file).isFile()) {
        response.writeHead(404).end();
        return;
      }
      response.writeHead(200, {
        'content-type': TYPES[extname(file)] ?? 'application/octet-stream',
        'cache-control': 'no-cache',
      });
      response.end(readFileSync(file));
    });
    const host = new Host(folder, server);
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    return host;
  }

  get address(): string {
    return `http://localhost:${(this.#server.address() as AddressInfo).port}/`;
  }

  publish(folder: string): void {
    this.#folder = folder;
  }

  async close(): Promise<void> {
    this.#server.closeAllConnections();
    await new Promise((resolve) => this.#server.close(resolve));
  }
}
