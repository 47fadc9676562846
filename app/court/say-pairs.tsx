import { useEffect } from 'preact/hooks';
import type { Pair } from '../../core/round/pair.ts';
import { prefs } from '../device/prefs.ts';
import { canSay, say, sayNoMore } from '../device/voice.ts';
import { Button } from '../parts/button.tsx';
import { playerName } from '../parts/names.ts';
import { words } from '../words/words.ts';

/** The names of the coming pairs in the phone's own voice, by itself where that was wished for. */
export function SayPairs({ round, pairs }: { round: string; pairs: readonly Pair[] }) {
  const t = words.value.court;
  const { language } = words.value;
  const { sound, sayPairs } = prefs.value;
  const speaks = sound !== 'off' && pairs.length > 0 && canSay(language);
  const sayThem = () =>
    say(
      t.saidPairs(pairs.map(({ letter, players }) => ({ letter, names: players.map(playerName) }))),
      language,
    );
  useEffect(() => {
    if (!speaks || !sayPairs) return;
    sayThem();
    return sayNoMore;
  }, [round, speaks]);
  return speaks ? <Button onClick={sayThem}>{t.sayPairs}</Button> : null;
}
