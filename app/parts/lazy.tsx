import type { ComponentChild, ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { words } from '../words/words.ts';
import { Notice } from './notice.tsx';

type Load<Props> = () => Promise<ComponentType<Props>>;

/**
 * A screen that is loaded when it is first looked at, or in an idle moment before; a failure is said,
 * and a reload tries again.
 *
 * @param ahead whether it is worth an idle moment: not where few phones ever look at it
 */
export function lazyScreen<Props extends object>(
  load: Load<Props>,
  ahead = true,
): ComponentType<Props> {
  if (ahead) toCome.push(load);
  return lazy(load, () => (
    <main class="page">
      <Notice as="fault">{words.value.notLoaded}</Notice>
    </main>
  ));
}

const toCome: (() => Promise<unknown>)[] = [];

/** Loads the screens that were not looked at yet, one after the other, for as long as there is time for it. */
export async function loadAhead(isTime: () => Promise<boolean>): Promise<void> {
  while (toCome.length > 0 && (await isTime()))
    await toCome
      .shift()?.()
      .catch(() => {});
}

/**
 * A part of a screen that the screen can do without: it is loaded once the screen stands, and until
 * then nothing is in its place; where it cannot be loaded, `whereNot`, or nothing.
 */
export const lazyPart = <Props extends object>(
  load: Load<Props>,
  whereNot: () => ComponentChild = () => null,
): ComponentType<Props> => lazy(load, whereNot);

function lazy<Props extends object>(
  load: Load<Props>,
  whereNot: () => ComponentChild,
): ComponentType<Props> {
  let loaded: ComponentType<Props> | undefined;
  return function Lazy(props: Props) {
    const [Content, setContent] = useState<ComponentType<Props> | undefined>(() => loaded);
    const [failed, setFailed] = useState(false);
    useEffect(() => {
      if (Content) return;
      load().then(
        (content) => {
          loaded = content;
          setContent(() => content);
        },
        () => setFailed(true),
      );
    }, [Content]);
    if (failed) return whereNot();
    return Content ? <Content {...props} /> : null;
  };
}
