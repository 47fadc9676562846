import { twins } from '../../core/exchange/twins.ts';
import { isKnown } from '../../core/ledger/entry.ts';
import { foldOneOrTwo } from '../../core/ledger/merges.ts';
import { append, squad, standing } from '../ledger.ts';
import { Button } from '../parts/button.tsx';
import { playerName } from '../parts/names.ts';
import { Notice } from '../parts/notice.tsx';
import { summaries } from '../practices.ts';
import { handoverWords } from '../words/handover-words.ts';

const said = () => foldOneOrTwo(standing.value.filter(isKnown));

/** A player with how often the player was there, so that two of one name can be told apart. */
function known(player: string): string {
  const days = summaries.value.filter(({ attended }) => attended.includes(player)).length;
  return `${playerName(player)} (${handoverWords.value.players.since(days)})`;
}

/** Who may be one child, each for a yes or a no. */
export function Twins() {
  const t = handoverWords.value.players;
  const asked = twins(squad.value.values(), summaries.value, said());
  return (
    <>
      {asked.map(({ player, into }) => (
        <Notice key={player}>
          <p class="break">{t.ask(known(into), known(player))}</p>
          <div class="row">
            <Button onClick={() => append({ kind: 'players-merged', player, into })}>
              {t.one}
            </Button>
            <Button onClick={() => append({ kind: 'players-parted', player, into })}>
              {t.two}
            </Button>
          </div>
        </Notice>
      ))}
    </>
  );
}

/** Children who stand twice in the squad, and those who were taken for one. */
export function TwinsPart() {
  const t = handoverWords.value.players;
  const merged = [...said().values()].filter(({ one }) => one);
  const asked = twins(squad.value.values(), summaries.value, said());
  return (
    <section class="part" aria-labelledby="twins">
      <h2 id="twins">{t.title}</h2>
      <p>{t.means}</p>
      {asked.length === 0 && merged.length === 0 && <p class="faint">{t.none}</p>}
      <Twins />
      {merged.length > 0 && (
        <>
          <h3>{t.merged}</h3>
          {merged.map(({ player, into }) => (
            <Button key={player} onClick={() => append({ kind: 'players-parted', player, into })}>
              <span class="break">{t.takeBack(playerName(into))}</span>
            </Button>
          ))}
        </>
      )}
    </section>
  );
}
