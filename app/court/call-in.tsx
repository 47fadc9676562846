import { useState } from 'preact/hooks';
import type { OpenRound } from '../../core/ledger/practice.ts';
import { endSecond } from '../../core/round/clock.ts';
import { mostSets } from '../../core/round/tally.ts';
import { callCount, roundsLeft } from '../actions.ts';
import { Button } from '../parts/button.tsx';
import { Letter } from '../parts/letter.tsx';
import { namesOf } from '../parts/names.ts';
import { Notice } from '../parts/notice.tsx';
import { Pads } from '../parts/pads.tsx';
import { PairNames } from '../parts/pair-names.tsx';
import { openPractice } from '../practices.ts';
import { go } from '../route.ts';
import { words } from '../words/words.ts';
import { type Caller, callersOf } from './callers.ts';
import { marksToDecide, settleAndGoOn } from './onward.ts';
import './call-in.css';

/**
 * What the pairs shout as the horn has gone, court by court: a number is one touch, and the next
 * pair is in view at once.
 */
export function CallIn({ round }: { round: OpenRound }) {
  const t = words.value.court;
  const callers = callersOf(round);
  const [chosen, setChosen] = useState<number>();
  const next = callers.findIndex(({ sets }) => sets === undefined);
  const at = chosen ?? Math.max(0, next);
  const caller = callers[at];
  const call = (sets: number | undefined) => {
    if (!caller) return;
    const { letter, player } = caller.side;
    callCount(round, letter, sets, player);
    // The one after it that nobody has heard yet; somebody who was put right is left as soon.
    const after = callers.findIndex((each, place) => place > at && each.sets === undefined);
    setChosen(after >= 0 ? after : sets === undefined ? at : undefined);
  };
  const doubtful = callers.find((each) => isTooMany(round, each));
  const isLast = roundsLeft(openPractice.value) === 0;
  return (
    <div class="call-in">
      <ol class="call-list" data-many={callers.length > MANY || undefined}>
        {callers.map((each, place) => (
          <li key={`${each.side.letter} ${each.side.player}`}>
            <button
              type="button"
              class="call-row"
              aria-pressed={place === at}
              ref={place === at ? intoView : null}
              onClick={() => setChosen(place)}
            >
              <Letter letter={each.side.letter} />
              <span class="call-names">
                <PairNames players={each.players} terms={round.terms} />
              </span>
              {each.sets === undefined ? (
                <span class="small">{t.notHeard}</span>
              ) : (
                <b class="number">{words.value.number(each.sets)}</b>
              )}
            </button>
          </li>
        ))}
      </ol>
      <div class="call-pads">
        {doubtful && <Notice>{t.tooMany(namesOf(doubtful.players), doubtful.sets ?? 0)}</Notice>}
        {caller && (
          <Pads
            key={at}
            label={namesOf(caller.players)}
            value={caller.sets}
            none={t.notHeard}
            short
            onPick={call}
          />
        )}
        {marksToDecide(round) === 0 && (
          <Button as="main" onClick={() => settleAndGoOn(round)}>
            {isLast ? words.value.settle.finish : words.value.settle.next}
          </Button>
        )}
        <Button
          as={marksToDecide(round) === 0 ? 'quiet' : 'main'}
          onClick={() => go('settle', round.id)}
        >
          {t.settle}
        </Button>
      </div>
    </div>
  );
}

/** So many that they stand in two columns. */
const MANY = 8;

const intoView = (row: HTMLElement | null) => row?.scrollIntoView({ block: 'nearest' });

/** More sets than can be struck in the time: kept, and asked about. */
const isTooMany = ({ terms, clock }: OpenRound, { sets }: Caller): boolean =>
  clock !== undefined && sets !== undefined && sets > mostSets(terms, endSecond(clock));
