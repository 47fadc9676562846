import { fileURLToPath } from 'node:url';
import { build, type Plugin, type Rolldown } from 'vite';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/**
 * The whole app as the body of a function that is given the globals of a page and returns what
 * whole-app.ts exports: each run of it is a page with modules of its own.
 *
 * @param instead files of the repository in whose place another one is taken, by their endings
 */
export async function builtApp(instead: Readonly<Record<string, string>> = {}): Promise<string> {
  const built = (await build({
    configFile: false,
    root: here('.'),
    logLevel: 'error',
    oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
    plugins: [insteadOf(instead)],
    define: { 'import.meta.env.DEV': 'true' },
    build: {
      write: false,
      minify: false,
      cssCodeSplit: false,
      lib: { entry: here('whole-app.ts'), formats: ['iife'], name: 'theWholeApp' },
      rolldownOptions: { output: { codeSplitting: false } },
    },
  })) as Rolldown.RolldownOutput[];
  const script = built.flatMap(({ output }) => output).find((file) => file.type === 'chunk');
  if (!script) throw new Error('the app was not built');
  return `${script.code}\nreturn theWholeApp;`;
}

const insteadOf = (instead: Readonly<Record<string, string>>): Plugin => ({
  name: 'instead-of',
  enforce: 'pre',
  async resolveId(source, importer, options) {
    const found = await this.resolve(source, importer, { ...options, skipSelf: true });
    const ending = Object.keys(instead).find((each) => found?.id.endsWith(each));
    const other = ending === undefined ? undefined : instead[ending];
    return other === undefined || importer === other ? undefined : other;
  },
});
