/** A text's place in a file of words: "settings.themes.dark". */
export type TextPath = string;

/** The values that files of texts are read through, by the name they have in the app. */
export type Roots = Record<string, object>;

const NAME = '[A-Za-z_$][\\w$]*';
/** `const t = …`, `const t: Type = …` or `const { a, b: c } = …`, in front of what is read. */
const DECLARED = `const (?:(?<alias>${NAME})(?:: [^=;]+)?|\\{(?<parts>[^{}]*)\\}) = `;
const READ = new RegExp(
  `(?:${DECLARED})?(?<![\\w$.'-])(?<!typeof )(?<from>${NAME})(?<path>(?:\\??\\.${NAME})*)(?<after>\\(|\\[|;|)`,
  'g',
);

interface Part {
  root: string;
  at: readonly string[];
}

/** Every place of a text, in the order of the file. */
export function textsOf(object: object): TextPath[] {
  return Object.entries(object).flatMap(([key, value]) =>
    isBranch(value) ? textsOf(value).map((rest) => `${key}.${rest}`) : [key],
  );
}

const isBranch = (value: unknown): value is object =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * The texts that one source file of the app reads. A name that stands for a part of the texts is
 * followed from where it is declared to where the next declaration takes it. A part that is indexed
 * or handed on as a whole counts as read altogether.
 *
 * @returns for each root the places read, each a text or a part of the texts
 */
export function readIn(source: string, roots: Roots): Map<string, Set<TextPath>> {
  const read = new Map(Object.keys(roots).map((root) => [root, new Set<TextPath>()]));
  const known = new Map<string, Part>();
  for (const { groups = {} } of source.matchAll(READ)) {
    const { alias, parts, from = '', path = '', after } = groups;
    const steps = path.split(/\??\./).slice(1);
    const start: Part | undefined =
      from in roots && steps[0] === 'value' ? { root: from, at: [] } : known.get(from);
    if (alias) known.delete(alias);
    if (!start) continue;
    const { root } = start;
    const further = start.root === from ? steps.slice(1) : steps;
    const at = upToText(roots[root] ?? {}, [...start.at, ...further]);
    if (alias && after === ';' && isBranch(found(roots[root] ?? {}, at))) {
      known.set(alias, { root, at });
    } else if (parts !== undefined && after === ';') {
      for (const part of parts.split(',').map((each) => each.trim())) {
        const [key = '', name = key] = part.split(/: | = /);
        if (key === '') continue;
        if (isBranch(found(roots[root] ?? {}, [...at, key]))) {
          known.set(name, { root, at: [...at, key] });
        } else read.get(root)?.add([...at, key].join('.'));
      }
    } else if (at.length > 0) read.get(root)?.add(at.join('.'));
  }
  return read;
}

const found = (object: object, at: readonly string[]): unknown =>
  at.reduce<unknown>((value, key) => (value as Record<string, unknown> | undefined)?.[key], object);

/** The steps that lead to a text; those beyond it are what is done with the text. */
function upToText(object: object, steps: readonly string[]): string[] {
  const end = steps.findIndex((_, i) => !isBranch(found(object, steps.slice(0, i + 1))));
  return steps.slice(0, end < 0 ? steps.length : end + 1);
}

/** The texts that none of the places covers. */
export const unread = (object: object, places: ReadonlySet<TextPath>): TextPath[] =>
  textsOf(object).filter((text) => {
    const steps = text.split('.');
    return !steps.some((_, i) => places.has(steps.slice(0, i + 1).join('.')));
  });
