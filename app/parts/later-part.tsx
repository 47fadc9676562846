import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/**
 * A part of a screen that the screen can do without: it is loaded once the screen stands, and until
 * then, or where it cannot be loaded, nothing is in its place.
 */
export function laterPart<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
): ComponentType<Props> {
  let loaded: ComponentType<Props> | undefined;
  return function LaterPart(props: Props) {
    const [Part, setPart] = useState<ComponentType<Props> | undefined>(() => loaded);
    useEffect(() => {
      if (Part) return;
      load().then(
        (part) => {
          loaded = part;
          setPart(() => part);
        },
        () => {},
      );
    }, [Part]);
    return Part ? <Part {...props} /> : null;
  };
}
