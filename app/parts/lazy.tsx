import type { ComponentChild, ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { words } from '../words/words.ts';
import { Notice } from './notice.tsx';

type Load<Props> = () => Promise<ComponentType<Props>>;

/** A screen that is loaded when it is first looked at; a failure is said, and a reload tries again. */
export const lazyScreen = <Props extends object>(load: Load<Props>): ComponentType<Props> =>
  lazy(load, () => (
    <main class="page">
      <Notice as="fault">{words.value.notLoaded}</Notice>
    </main>
  ));

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
