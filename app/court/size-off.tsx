import { useEffect, useState } from 'preact/hooks';
import { isOffSize, sizeAdvice } from '../../core/figures/advice.ts';
import type { OpenRound } from '../../core/ledger/practice.ts';
import { stepsPlayed } from '../../core/ledger/practice.ts';
import { comesAgain, withSize } from '../../core/round/block.ts';
import type { Tally } from '../../core/round/tally.ts';
import { currentPlan, plan } from '../actions.ts';
import { estimateNow, paceNow } from '../estimates.ts';
import { levels } from '../levels.ts';
import { Button } from '../parts/button.tsx';
import { Explained } from '../parts/explained.tsx';
import { namesOf } from '../parts/names.ts';
import { openPractice } from '../practices.ts';
import { figureWords } from '../words/figure-words.ts';
import { words } from '../words/words.ts';
import './size-off.css';

/** Where a pair got no set or more than eight: the size that would suit it, offered in one line. */
export function SizeOff({ round, tally }: { round: OpenRound; tally: Tally }) {
  const { terms } = round;
  const { letter, players } = tally.pair;
  const off = isOffSize(terms, tally.sets);
  const made = JSON.stringify(tally);
  const [ready, setReady] = useState<string>();
  useEffect(() => {
    if (off) void estimateNow(round.id, letter).then(() => setReady(made));
  }, [off, made]);
  if (!off || ready !== made) return null;
  const advice = sizeAdvice(
    levels.value,
    terms,
    players,
    currentPlan().seconds,
    paceNow(terms.drill),
  );
  if (!advice || advice.size === terms.size) return null;
  const t = figureWords.value.size;
  const take = () => plan(withSize(currentPlan(), terms.drill, advice.size));
  const played = openPractice.value ? stepsPlayed(openPractice.value) : [];
  const taken = currentPlan().steps.some(
    (step) => step.drill === terms.drill && step.size === advice.size,
  );
  return (
    <div class="size-off">
      <Explained of="size">
        {words.value.named(
          namesOf(players),
          `${tally.sets === 0 ? t.none : t.many(tally.sets)} ${t.instead(advice.size, advice.expected)}`,
        )}
      </Explained>
      {taken ? (
        <p role="status">{t.taken(advice.size)}</p>
      ) : (
        comesAgain(currentPlan(), played, terms.drill) && (
          <Button
            aria-label={words.value.named(t.next(advice.size), namesOf(players))}
            onClick={take}
          >
            {t.next(advice.size)}
          </Button>
        )
      )}
    </div>
  );
}
