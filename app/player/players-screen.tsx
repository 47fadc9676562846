import type { Player } from '../../core/ledger/squad.ts';
import { squad } from '../ledger.ts';
import { Bar } from '../parts/bar.tsx';
import { Button } from '../parts/button.tsx';
import { Messages } from '../parts/messages.tsx';
import { go, href } from '../route.ts';
import { lookWords } from '../words/look-words.ts';
import './players.css';

/** Everyone's name, and nobody's numbers: each player opens an own page. */
export function PlayersScreen() {
  const t = lookWords.value.players;
  const players = [...squad.value.values()];
  const resting = players.filter((player) => player.resting);
  return (
    <>
      <main class="page">
        <header>
          <h1>{t.title}</h1>
        </header>
        <Messages />
        {players.length === 0 ? (
          <section class="part">
            <p>{t.none}</p>
            <Button as="main" onClick={() => go('squad')}>
              {t.toSquad}
            </Button>
          </section>
        ) : (
          <section class="part">
            <p>{t.pick}</p>
            <Names players={players.filter((player) => !player.resting)} />
            <Button onClick={() => go('review')}>{lookWords.value.players.review}</Button>
          </section>
        )}
        {resting.length > 0 && (
          <section class="part" aria-labelledby="resting">
            <h2 id="resting">{t.resting}</h2>
            <Names players={resting} />
          </section>
        )}
      </main>
      <Bar />
    </>
  );
}

function Names({ players }: { players: Player[] }) {
  return (
    <ul class="players">
      {players.map(({ id, name }) => (
        <li key={id}>
          <a href={href('player', id)}>{name}</a>
        </li>
      ))}
    </ul>
  );
}
