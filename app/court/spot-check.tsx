import { useEffect, useMemo, useState } from 'preact/hooks';
import { checksIn } from '../../core/ledger/checks-in.ts';
import type { OpenRound } from '../../core/ledger/practice.ts';
import { type Clock, isOver, liveSeconds } from '../../core/round/clock.ts';
import { sights } from '../../core/round/look.ts';
import { answerLook } from '../actions.ts';
import { now } from '../device/clock.ts';
import { Button } from '../parts/button.tsx';
import { playerName } from '../parts/names.ts';
import { shortName } from '../parts/short-name.ts';
import { openPractice } from '../practices.ts';
import { focusQuestion } from '../words/focus-question.ts';
import { words } from '../words/words.ts';
import './spot-check.css';

/** How often it is looked whether somebody is to be named. */
const LOOK_MS = 200;
/** A finger that was on its way as the name came meant something else. */
const TOO_SOON = 0.4;

/**
 * The place of the focus, and of the one player who is to be looked at now. It is as large whether
 * somebody is named or not, so that no tile ever moves; who is not looked at is asked again later.
 */
export function SpotCheck({ round, clock }: { round: OpenRound; clock: Clock }) {
  const t = words.value.looks;
  const { focus } = round;
  const checks = useMemo(
    () => (openPractice.value ? checksIn(openPractice.value, round) : []),
    [round.id],
  );
  const openNow = () => {
    if (isOver(clock, now())) return -1;
    const second = liveSeconds(clock, now());
    return checks.findIndex((each) => each.second <= second && second < each.until);
  };
  const [at, setAt] = useState(openNow);
  useEffect(() => {
    const look = () => setAt(openNow());
    look();
    const looking = setInterval(look, LOOK_MS);
    return () => clearInterval(looking);
  }, [clock, checks]);
  if (focus === undefined) return null;
  const asked = checks[at];
  const others = round.tallies
    .flatMap(({ pair }) => pair.players)
    .filter((p) => p !== asked?.player);
  const said = round.looks?.findLast(
    ({ player, second }) => player === asked?.player && second === asked.second,
  );
  return (
    <section class="look" aria-label={t.title} data-asked={asked ? true : undefined}>
      <p role="status">
        {asked
          ? words.value.named(
              shortName(playerName(asked.player), others.map(playerName)),
              focusQuestion(focus),
            )
          : words.value.named(t.title, focusQuestion(focus))}
      </p>
      {checks.length > 0 && (
        <div class="look-answers">
          {sights.map((saw) => (
            <Button
              key={saw}
              disabled={!asked}
              aria-pressed={said?.saw === saw}
              onClick={() => {
                if (!asked || liveSeconds(clock, now()) - asked.second < TOO_SOON) return;
                answerLook(round, { ...asked, focus, saw });
              }}
            >
              {t.is[saw]}
            </Button>
          ))}
        </div>
      )}
    </section>
  );
}
