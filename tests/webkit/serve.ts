import { fileURLToPath } from 'node:url';
import { preview } from 'vite';

export interface Served {
  address: string;
  /** Cuts the network off: from now on nothing answers. */
  close(): Promise<void>;
}

/** Serves dist/ at a port that is free. */
export async function serve(): Promise<Served> {
  const server = await preview({
    configFile: fileURLToPath(new URL('../../app/vite.config.ts', import.meta.url)),
    logLevel: 'error',
    preview: { port: 4287 },
  });
  return { address: server.resolvedUrls?.local[0] ?? '', close: () => server.close() };
}
