import { useState } from 'preact/hooks';
import { isPaused } from '../../core/round/clock.ts';
import { currentRound } from '../actions.ts';
import { append, forgetErased, merges, squad, store } from '../ledger.ts';
import { Button } from '../parts/button.tsx';
import { HoldButton } from '../parts/hold-button.tsx';
import { playerName } from '../parts/names.ts';
import { Notice } from '../parts/notice.tsx';
import { openPractice, summaries } from '../practices.ts';
import { replace } from '../route.ts';
import { handoverWords } from '../words/handover-words.ts';
import { words } from '../words/words.ts';

/** Whoever was said to be one child with a player goes too. */
const idsOf = (player: string): string[] => [
  player,
  ...[...merges.value].flatMap(([id, into]) => (into === player ? [id] : [])),
];

const erasePlayer = (player: string) =>
  append(...idsOf(player).map((id) => ({ kind: 'player-erased' as const, player: id })));
const erasePractice = (erased: string) => append({ kind: 'practice-erased', erased });

/** Takes a player, a practice or everything off this phone for good. */
export function ErasePart() {
  const t = handoverWords.value.erase;
  const [done, setDone] = useState<string>();
  const [failed, setFailed] = useState(false);
  const erase = (what: string, say: () => void) => {
    setFailed(false);
    say();
    setDone(what);
    forgetErased().catch(() => setFailed(true));
  };
  const running = currentRound(openPractice.value)?.clock;
  const practices = summaries.value
    .filter(
      ({ practice }) => !(running && !isPaused(running) && practice === openPractice.value?.id),
    )
    .toReversed();
  return (
    <section class="part" aria-labelledby="erase">
      <h2 id="erase">{t.title}</h2>
      <p>{t.means}</p>
      <One
        label={t.player}
        means={t.playerMeans}
        all={[...squad.value.values()].map(({ id, name }) => [id, name])}
        nameOf={playerName}
        onErase={(id, name) => erase(name, () => erasePlayer(id))}
      />
      <One
        label={t.practice}
        means={t.practiceMeans}
        all={practices.map(({ practice, date }) => [practice, words.value.date(date)])}
        nameOf={(id) =>
          handoverWords.value.practiceOf(
            words.value.date(practices.find(({ practice }) => practice === id)?.date ?? ''),
          )
        }
        onErase={(id, name) => erase(name, () => erasePractice(id))}
      />
      <div class="stack" role="status">
        {done !== undefined && (
          <>
            <p class="break">{t.done(done)}</p>
            <p>{t.doneMeans}</p>
          </>
        )}
      </div>
      {failed && <Notice as="fault">{t.failed}</Notice>}
      <Everything />
    </section>
  );
}

function One({
  label,
  means,
  all,
  nameOf,
  onErase,
}: {
  label: string;
  means: string;
  all: readonly (readonly [id: string, name: string])[];
  nameOf: (id: string) => string;
  onErase: (id: string, name: string) => void;
}) {
  const t = handoverWords.value.erase;
  const [chosen, setChosen] = useState('');
  const [sure, setSure] = useState(false);
  const choose = (id: string) => {
    setChosen(id);
    setSure(false);
  };
  if (all.length === 0) return null;
  return (
    <>
      <label>
        {label}
        <select value={chosen} onChange={(event) => choose(event.currentTarget.value)}>
          <option value="">{t.choose}</option>
          {all.map(([id, name]) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <p class="small">{means}</p>
      {chosen !== '' &&
        (sure ? (
          <Notice>
            <p class="break">{t.sure(nameOf(chosen))}</p>
            <div class="row">
              <Button
                onClick={() => {
                  const name = nameOf(chosen);
                  choose('');
                  onErase(chosen, name);
                }}
              >
                <span class="break">{t.erase(nameOf(chosen))}</span>
              </Button>
              <Button onClick={() => setSure(false)}>{t.cancel}</Button>
            </div>
          </Notice>
        ) : (
          <Button onClick={() => setSure(true)}>
            <span class="break">{t.erase(nameOf(chosen))}</span>
          </Button>
        ))}
    </>
  );
}

function Everything() {
  const t = handoverWords.value.erase;
  const [failed, setFailed] = useState(false);
  const erase = () =>
    store.clear().then(
      () => {
        // What was shown is gone: the app begins anew, as on its first day.
        replace();
        location.reload();
      },
      () => setFailed(true),
    );
  return (
    <>
      <h3>{t.everything}</h3>
      <p class="small">{t.everythingMeans}</p>
      <HoldButton onHeld={() => void erase()}>{t.eraseEverything}</HoldButton>
      {failed && <Notice as="fault">{t.notEverything}</Notice>}
    </>
  );
}
