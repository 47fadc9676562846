import { fileURLToPath } from 'node:url';
import preact from '@preact/preset-vite';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { contentPolicy } from './content-policy.ts';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

export default defineConfig({
  root: here('.'),
  // Relative addresses: the same files work under any base path.
  base: './',
  publicDir: here('public'),
  build: {
    outDir: here('../dist'),
    emptyOutDir: true,
    target: 'es2022',
    // A late screen asks for its own style beforehand, not for the scripts that its script asks for:
    // their names would weigh a kilobyte in the first load.
    modulePreload: {
      polyfill: false,
      resolveDependencies: (_, files) => files.filter((file) => file.endsWith('.css')),
    },
    rolldownOptions: {
      output: {
        // Seven letters tell versions of a file apart as well as eight, and every name is in the first load.
        chunkFileNames: 'assets/[name]-[hash:7].js',
        assetFileNames: 'assets/[name]-[hash:7][extname]',
        // All that the first screen needs in one file: it packs better than thirty small ones.
        codeSplitting: { groups: [{ name: 'first', test: /app\/main\.tsx$/ }] },
      },
    },
  },
  plugins: [
    preact(),
    contentPolicy(),
    VitePWA({
      strategies: 'injectManifest',
      srcDir: '../sw',
      filename: 'sw.ts',
      injectRegister: false,
      manifest: false,
      injectManifest: { globPatterns: ['**/*.{html,js,css,svg,png,webmanifest}'] },
    }),
  ],
});
