import { useState } from 'preact/hooks';
import type { OpenRound } from '../../core/ledger/practice.ts';
import { endSecond } from '../../core/round/clock.ts';
import { withPlayer } from '../../core/round/pairs.ts';
import { correctPairs, watchStretch } from '../actions.ts';
import { squad } from '../ledger.ts';
import { Button } from '../parts/button.tsx';
import { Letter } from '../parts/letter.tsx';
import { playerName } from '../parts/names.ts';
import { words } from '../words/words.ts';

/** Stretches are told in steps of so many seconds: nobody knows it better. */
const STRETCH = 10;

/** Seconds of a round in which nobody watched: what was not counted in them is not none. */
function Unwatched({ round }: { round: OpenRound }) {
  const t = words.value.settle;
  const end = Math.floor(round.clock ? endSecond(round.clock) : 0);
  const [from, setFrom] = useState(0);
  const [to, setTo] = useState(end);
  const seconds = [...Array(Math.ceil(end / STRETCH)).keys()].map((at) => at * STRETCH);
  const choose = (label: string, value: number, all: number[], put: (second: number) => void) => (
    <label>
      {label}{' '}
      <select value={value} onChange={(event) => put(Number(event.currentTarget.value))}>
        {all.map((second) => (
          <option key={second} value={second}>
            {words.value.clock(second)}
          </option>
        ))}
      </select>
    </label>
  );
  return (
    <>
      <p>{t.unwatched}</p>
      {round.unwatched?.map((stretch) => (
        <div key={stretch.from} class="row">
          <span class="grow">
            {words.value.clock(stretch.from)} – {words.value.clock(stretch.to)}
          </span>
          <Button onClick={() => watchStretch(round, stretch, true)}>{t.wasWatched}</Button>
        </div>
      ))}
      <div class="row">
        {choose(t.from, from, seconds, setFrom)}
        {choose(t.to, to, [...seconds.filter((second) => second > from), end], setTo)}
        <Button disabled={to <= from} onClick={() => watchStretch(round, { from, to }, false)}>
          {t.strikeStretch}
        </Button>
      </div>
    </>
  );
}

/** What is rarely wrong: who played, and whether the round should count at all. */
export function PutRight({ round, onStrike }: { round: OpenRound; onStrike: () => void }) {
  const t = words.value.settle;
  const pairs = round.tallies.map(({ pair }) => pair);
  const inPairs = pairs.flatMap(({ players }) => players);
  const others = [...squad.value.keys()].filter((player) => !inPairs.includes(player));
  return (
    <details class="part">
      <summary>{t.putRight}</summary>
      <div class="stack">
        <p>{t.wrongNames}</p>
        {pairs.map(({ letter, players }) => (
          <div key={letter} class="settle-names">
            <Letter letter={letter} />
            {players.map((player, place) => (
              <select
                key={player}
                aria-label={t.plays(letter, place + 1)}
                value={player}
                onChange={(event) =>
                  correctPairs(round, withPlayer(pairs, player, event.currentTarget.value))
                }
              >
                {[...inPairs, ...others].map((each) => (
                  <option key={each} value={each}>
                    {playerName(each)}
                  </option>
                ))}
              </select>
            ))}
          </div>
        ))}
        <Unwatched round={round} />
        {!round.struck && <Button onClick={onStrike}>{t.strikeRound}</Button>}
      </div>
    </details>
  );
}
