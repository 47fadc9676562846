import { useEffect, useState } from 'preact/hooks';
import { isoWeek, weekName } from '../../core/calendar.ts';
import type { Practice } from '../../core/ledger/practice.ts';
import { correctPresence, strikePractice } from '../actions.ts';
import { squad } from '../ledger.ts';
import { Bar } from '../parts/bar.tsx';
import { Button } from '../parts/button.tsx';
import { Messages } from '../parts/messages.tsx';
import { playerName } from '../parts/names.ts';
import { Notice } from '../parts/notice.tsx';
import { practiceAt, takeOut } from '../practices.ts';
import { EffortRows } from '../quality/effort-rows.tsx';
import { go, href } from '../route.ts';
import { deskWords } from '../words/desk-words.ts';
import { drillName } from '../words/drill-text.ts';
import { words } from '../words/words.ts';
import '../parts/presence.css';

/** A practice that is over: who was there and what was counted can be put right. */
export function PracticeScreen({ id }: { id: string }) {
  const t = deskWords.value.practice;
  const [missing, setMissing] = useState(false);
  useEffect(() => {
    takeOut(id).then(
      (there) => setMissing(!there),
      () => setMissing(true),
    );
  }, [id]);
  const practice = practiceAt(id);
  return (
    <>
      <main class="page">
        {practice ? <Whole practice={practice} /> : missing && <p>{t.notHere}</p>}
      </main>
      <Bar />
    </>
  );
}

function Whole({ practice }: { practice: Practice }) {
  const t = deskWords.value.practice;
  const { date, struck } = practice;
  return (
    <>
      <header>
        <h1>{t.title(words.value.date(date))}</h1>
        <Button onClick={() => go('week', weekName(isoWeek(date)))}>{t.toWeek}</Button>
      </header>
      <Messages />
      <p class="faint">{t.means}</p>
      {struck && <Notice>{t.struck}</Notice>}
      <There practice={practice} />
      <Rounds practice={practice} />
      {!struck && <EffortRows practice={practice} />}
      <Button onClick={() => strikePractice(practice)}>{struck ? t.restore : t.strike}</Button>
    </>
  );
}

function There({ practice }: { practice: Practice }) {
  const t = deskWords.value.practice;
  const there = new Set(practice.attended);
  const players = new Set([
    ...[...squad.value.values()].filter(({ resting }) => !resting).map(({ id }) => id),
    ...there,
  ]);
  return (
    <section class="part" aria-labelledby="there">
      <h2 id="there">{t.there}</h2>
      <ul class="presence">
        {[...players].map((player) => (
          <li key={player}>
            <button
              type="button"
              class="choice"
              aria-pressed={there.has(player)}
              onClick={() => correctPresence(practice, player, !there.has(player))}
            >
              <span class="grow break">{playerName(player)}</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Rounds({ practice }: { practice: Practice }) {
  const t = deskWords.value.practice;
  const played = practice.rounds.filter(({ clock }) => clock);
  return (
    <section class="part" aria-labelledby="rounds">
      <h2 id="rounds">{t.rounds}</h2>
      {played.length === 0 && <p>{t.noRounds}</p>}
      <ol class="ruled">
        {played.map((round) => (
          <li key={round.id}>
            <a class="grow break" href={href('settle', round.id)}>
              {words.value.named(
                words.value.today.roundNumber(round.ordinal + 1),
                drillName(round.terms),
              )}
            </a>
            <span class="faint">
              {round.struck ? t.struckRound : round.settled ? t.settled : t.toSettle}
            </span>
          </li>
        ))}
      </ol>
    </section>
  );
}
