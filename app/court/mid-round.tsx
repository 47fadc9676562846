import { useState } from 'preact/hooks';
import type { OpenRound } from '../../core/ledger/practice.ts';
import { nameFault } from '../../core/ledger/squad.ts';
import { liveSeconds } from '../../core/round/clock.ts';
import type { Tally } from '../../core/round/tally.ts';
import { come, joinPair, stopPair } from '../actions.ts';
import { now } from '../device/clock.ts';
import { Button } from '../parts/button.tsx';
import { namesOf, playerName } from '../parts/names.ts';
import { Notice } from '../parts/notice.tsx';
import { Presence } from '../parts/presence.tsx';
import { openPractice } from '../practices.ts';
import { addPlayers, namesBeside } from '../squad/actions.ts';
import { words } from '../words/words.ts';
import { shownTallies } from './sides.ts';

/**
 * Who comes and goes while the clock runs. A pair of which one leaves stops at that second; the other
 * can go on in a trio from then on. Whoever comes plays from the next round on.
 */
export function MidRound({ round }: { round: OpenRound }) {
  const playing = shownTallies(round);
  const pairOf = (player: string, tallies: readonly Tally[]) =>
    tallies.find(({ pair }) => pair.players.includes(player))?.pair;
  const changed = (player: string, here: boolean) => {
    if (here) {
      const stopped = pairOf(player, stoppedPairs(round));
      // A slip of the finger: the pair goes on, if nobody of it plays elsewhere by now.
      if (stopped && !stopped.players.some((each) => pairOf(each, playing))) {
        stopPair(round, stopped.letter, undefined);
      }
      return;
    }
    const pair = pairOf(player, playing);
    if (!pair || !round.clock) return;
    const others = pair.players.filter((each) => each !== player);
    if (others.length === 1) stopPair(round, pair.letter, liveSeconds(round.clock, now()));
    else joinPair(round, undefined, { ...pair, players: others });
  };
  return (
    <>
      <Partners round={round} playing={playing} />
      <Presence onChange={changed} />
      <NewPlayer />
      <p class="small">{words.value.court.hereLater}</p>
    </>
  );
}

/** Pairs of the round that stopped before its end. */
const stoppedPairs = (round: OpenRound): Tally[] => {
  const playing = new Set(shownTallies(round));
  return round.tallies.filter((tally) => !playing.has(tally));
};

/** Who lost a partner in this round, is still here, and can join another pair. */
function Partners({ round, playing }: { round: OpenRound; playing: readonly Tally[] }) {
  const t = words.value.court;
  const here = new Set(openPractice.value?.here);
  const isPlaying = (player: string) => playing.some(({ pair }) => pair.players.includes(player));
  const alone = [...new Set(stoppedPairs(round).flatMap(({ pair }) => pair.players))].filter(
    (player) => here.has(player) && !isPlaying(player),
  );
  const pairs = playing.map(({ pair }) => pair).filter(({ players }) => players.length === 2);
  return (
    <>
      {alone.map((player) => (
        <Notice key={player}>
          <p>{t.withoutPartner(playerName(player))}</p>
          <div class="row">
            {pairs.map((pair) => (
              <Button
                key={pair.letter}
                aria-label={t.joins(playerName(player), namesOf(pair.players))}
                onClick={() => joinPair(round, player, pair)}
              >
                {pair.letter}: {namesOf(pair.players)}
              </Button>
            ))}
          </div>
        </Notice>
      ))}
    </>
  );
}

/** Somebody who was never here before: added by name without leaving the court. */
function NewPlayer() {
  const t = words.value.court;
  const [name, setName] = useState('');
  const [faulty, setFaulty] = useState(false);
  const add = (event: Event) => {
    event.preventDefault();
    if (nameFault(name, namesBeside())) {
      setFaulty(true);
      return;
    }
    come(...addPlayers([{ name }]));
    setName('');
    setFaulty(false);
  };
  return (
    <form class="row" onSubmit={add}>
      <input
        class="grow"
        aria-label={t.newName}
        placeholder={t.newName}
        autocomplete="off"
        value={name}
        onInput={(event) => setName(event.currentTarget.value)}
      />
      <Button type="submit">{t.addName}</Button>
      {faulty && <Notice as="fault">{t.nameFaulty}</Notice>}
    </form>
  );
}
