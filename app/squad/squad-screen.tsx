import { squad } from '../ledger.ts';
import { Bar } from '../parts/bar.tsx';
import { Button } from '../parts/button.tsx';
import { Messages } from '../parts/messages.tsx';
import { go } from '../route.ts';
import { deskWords } from '../words/desk-words.ts';
import { AddPlayer } from './add-player.tsx';
import { PlayerRow } from './player-row.tsx';
import { Roster } from './roster.tsx';
import { Wishes } from './wishes.tsx';
import './squad.css';

/** The players of the squad: put them in, change them, let them rest. */
export function SquadScreen() {
  const t = deskWords.value.squad;
  const players = [...squad.value.values()];
  const active = players.filter((player) => !player.resting);
  const resting = players.filter((player) => player.resting);
  return (
    <>
      <main class="page">
        <header>
          <h1>{t.title}</h1>
          <span class="number">{t.players(active.length)}</span>
        </header>
        <Messages />
        <AddPlayer />
        {active.length === 1 && <p>{t.oneMore}</p>}
        {active.length > 1 && (
          <Button as="main" onClick={() => go()}>
            {t.toToday}
          </Button>
        )}
        {active.length > 0 && (
          <section class="part" aria-labelledby="active">
            <h2 id="active">{t.list}</h2>
            <ul class="ruled squad-list">
              {active.map((player) => (
                <PlayerRow key={player.id} player={player} />
              ))}
            </ul>
          </section>
        )}
        {active.length > 2 && <Wishes players={active} />}
        {resting.length > 0 && (
          <section class="part" aria-labelledby="resting">
            <h2 id="resting">{t.resting}</h2>
            <p class="faint">{t.restingMeans}</p>
            <ul class="ruled squad-list">
              {resting.map((player) => (
                <PlayerRow key={player.id} player={player} />
              ))}
            </ul>
          </section>
        )}
        <Roster />
      </main>
      <Bar />
    </>
  );
}
