import type { Handed } from '../device/share.ts';
import { words } from '../words/words.ts';

/** What became of a file that was handed over. */
export function HandedOver({ handed, name }: { handed: Handed | undefined; name: string }) {
  const t = words.value.handed;
  return (
    <p class="break" role="status">
      {handed === undefined ? '' : handed === 'saved' ? t.saved(name) : t[handed]}
    </p>
  );
}
