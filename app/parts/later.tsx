import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { words } from '../words/words.ts';
import { Notice } from './notice.tsx';

/** A screen that is loaded when it is first looked at; a failure is said and can be tried again. */
export function later<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
): ComponentType<Props> {
  let loaded: ComponentType<Props> | undefined;
  return function Later(props: Props) {
    const [Screen, setScreen] = useState<ComponentType<Props> | undefined>(() => loaded);
    const [failed, setFailed] = useState(false);
    useEffect(() => {
      if (Screen) return;
      load().then(
        (screen) => {
          loaded = screen;
          setScreen(() => screen);
        },
        () => setFailed(true),
      );
    }, [Screen]);
    if (failed) {
      return (
        <main class="page">
          <Notice as="fault">{words.value.notLoaded}</Notice>
        </main>
      );
    }
    return Screen ? <Screen {...props} /> : null;
  };
}
