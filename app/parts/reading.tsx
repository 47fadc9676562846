import { useEffect, useState } from 'preact/hooks';
import { readHistory } from '../practices.ts';
import { words } from '../words/words.ts';
import { Notice } from './notice.tsx';

/** Stands where figures will, until the earlier practices that they need were read. */
export function Reading() {
  const [failed, setFailed] = useState(false);
  useEffect(() => {
    readHistory().catch(() => setFailed(true));
  }, []);
  if (failed) return <Notice as="fault">{words.value.notRead}</Notice>;
  return (
    <p class="faint" role="status">
      {words.value.reading}
    </p>
  );
}
