import { countsByPlayer, takesAdvice } from '../../core/drill/counting-rules.ts';
import { type OpenRound, recordedIn } from '../../core/ledger/practice.ts';
import { isOver, isTooShort } from '../../core/round/clock.ts';
import type { Mark, Tally } from '../../core/round/tally.ts';
import {
  bestRun,
  callCount,
  correct,
  currentRound,
  judge,
  press,
  roundsLeft,
  showing,
  turnRoles,
} from '../actions.ts';
import { now } from '../device/clock.ts';
import { Button } from '../parts/button.tsx';
import { lazyPart } from '../parts/lazy.tsx';
import { Letter } from '../parts/letter.tsx';
import { Messages } from '../parts/messages.tsx';
import { namesOf } from '../parts/names.ts';
import { Notice } from '../parts/notice.tsx';
import { Pads } from '../parts/pads.tsx';
import { PairNames } from '../parts/pair-names.tsx';
import { openPractice, roundAt } from '../practices.ts';
import { go } from '../route.ts';
import { drillName } from '../words/drill-text.ts';
import { words } from '../words/words.ts';
import { goOn } from './onward.ts';
import './settle.css';

const PutRight = lazyPart(() => import('./put-right.tsx').then((file) => file.PutRight));
const OtherCounts = lazyPart(() =>
  import('../handover/other-counts.tsx').then((file) => file.OtherCounts),
);
const Aside = lazyPart(() => import('../handover/other-counts.tsx').then((file) => file.Aside));
const SizeOff = lazyPart(() => import('./size-off.tsx').then((file) => file.SizeOff));

/** The short step after the horn, in which counts are put right; open until the practice closes. */
export function SettleScreen({ round: id }: { round: string | undefined }) {
  const t = words.value.settle;
  const found = roundAt(id);
  if (!found?.round.clock) {
    return (
      <main class="page">
        <h1>{t.title}</h1>
        <p>{t.none}</p>
        <Button onClick={() => go()}>{words.value.court.toToday}</Button>
      </main>
    );
  }
  const { practice, round } = found;
  const { clock } = found.round;
  // One of a practice that is over is put right from that practice's own page.
  const isOpen = practice.id === openPractice.value?.id;
  const isLatest = isOpen && currentRound(practice)?.id === round.id;
  const back = () => (isOpen ? go() : go('practice', practice.id));
  const strike = () => {
    press('round-struck', round);
    if (isLatest) goOn();
  };
  const settle = () => {
    press('round-settled', round);
    if (isLatest) goOn();
    else back();
  };
  return (
    <main class="page settle">
      <header>
        <div>
          <p class="faint">
            {words.value.named(
              words.value.today.roundNumber(round.ordinal + 1),
              drillName(round.terms),
            )}
          </p>
          <h1>{t.title}</h1>
        </div>
      </header>
      <Messages />
      <p class="faint">
        {words.value.setCounts(round.terms.rule, round.terms.size)} ·{' '}
        {t.live(recordedIn(round, clock, now()))}
      </p>
      {round.jumped !== undefined && <Notice>{t.clockJumped(round.jumped)}</Notice>}
      {round.struck ? (
        <Notice>
          {t.struck}{' '}
          <Button onClick={() => press('round-restored', round)}>{t.restoreRound}</Button>
        </Notice>
      ) : (
        isOver(clock, now()) &&
        isTooShort(clock) && (
          <Notice>
            {t.tooShort(recordedIn(round, clock, now()))}{' '}
            <Button onClick={strike}>{t.strikeRound}</Button>
          </Notice>
        )
      )}
      <ul class="settle-pairs">
        {doubtfulFirst(round.tallies).map((tally) => (
          <PairRow key={tally.pair.letter} round={round} tally={tally} />
        ))}
      </ul>
      {round.aside && <Aside round={round} />}
      <Turned round={round} />
      <PutRight round={round} onStrike={strike} />
      <div class="before-start">
        <Button as="main" onClick={settle}>
          {isLatest && roundsLeft(practice) > 0 ? t.next : t.finish}
        </Button>
      </div>
      {isLatest && (
        <Button
          as="quiet"
          onClick={() => {
            press('round-skipped', round);
            goOn();
          }}
        >
          {t.skip}
        </Button>
      )}
      {/* Comes late, below everything that a finger may be on its way to. */}
      {takesAdvice(round.terms.rule) &&
        round.tallies.map((tally) => (
          <SizeOff key={tally.pair.letter} round={round} tally={tally} />
        ))}
    </main>
  );
}

/** When the roles turned: by it each player's strokes are told apart. */
function Turned({ round }: { round: OpenRound }) {
  const t = words.value.settle;
  const turned = round.tallies.find((tally) => tally.turned !== undefined)?.turned;
  if (!round.turns) return null;
  return (
    <section class="part">
      <p>{turned === undefined ? t.notTurned : t.turnedAt(words.value.clock(turned))}</p>
      {turned !== undefined && round.called.length > 0 && <p class="small">{t.shared}</p>}
      <Button
        onClick={() => turnRoles(round, turned === undefined ? round.seconds / 2 : undefined)}
      >
        {turned === undefined ? t.didTurn : t.didNotTurn}
      </Button>
    </section>
  );
}

/** Pairs with late or doubtful marks come first, decided or not, so that no row moves under a finger. */
const doubtfulFirst = (tallies: readonly Tally[]): Tally[] =>
  tallies.toSorted((a, b) => Number(isInDoubt(b)) - Number(isInDoubt(a)));

const isInDoubt = ({ late, doubtful }: Tally): boolean => late + doubtful > 0;

function PairRow({ round, tally }: { round: OpenRound; tally: Tally }) {
  const t = words.value.settle;
  const { letter, players } = tally.pair;
  const { rule, size } = round.terms;
  const names = namesOf(players);
  const doubts = (round.marks[letter] ?? []).filter(
    (mark) => !mark.takenBack && (mark.late || mark.doubtful),
  );
  return (
    <li class="part">
      <header>
        <Letter letter={letter} />
        <h2 class="grow break pair-list">
          <PairNames players={players} terms={round.terms} />
        </h2>
        {!countsByPlayer(rule) && (
          <output class={tally.unheard ? 'small' : 'number settle-sets'}>
            {tally.unheard ? words.value.court.notHeard : words.value.number(tally.sets)}
          </output>
        )}
      </header>
      {doubts.map((mark) => (
        <Doubt key={mark.id} round={round} mark={mark} />
      ))}
      {tally.also && <OtherCounts round={round} tally={tally} />}
      {countsByPlayer(rule) ? (
        players.map((player) => (
          <Count
            key={player}
            names={namesOf([player])}
            shown
            sets={tally.byPlayer?.[player] ?? 0}
            onChange={(by) => correct(round, letter, by, player)}
          />
        ))
      ) : (
        <details class="settle-more" open={tally.sets === 0 && takesAdvice(rule)}>
          <summary aria-label={t.changeOf(names)}>{t.change}</summary>
          <div class="stack">
            {round.called.includes(letter) ? (
              <Pads
                label={names}
                value={tally.unheard ? undefined : tally.sets}
                none={words.value.court.notHeard}
                onPick={(sets) => callCount(round, letter, sets)}
              />
            ) : (
              <Count
                names={names}
                sets={tally.sets}
                onChange={(by) => correct(round, letter, by)}
              />
            )}
            {takesAdvice(rule) && tally.sets === 0 && (
              <>
                <p>{t.best}</p>
                <Pads
                  label={t.bestOf(names)}
                  value={tally.best}
                  most={size - 1}
                  none={t.notSeen}
                  onPick={(shots) => bestRun(round, letter, shots)}
                />
              </>
            )}
          </div>
        </details>
      )}
      {!countsByPlayer(rule) && size > 1 && (
        <>
          <p class="small">{t.showing}</p>
          <Pads
            label={t.showingOf(names)}
            value={tally.showing}
            most={size - 1}
            none={t.notSeen}
            onPick={(shots) => showing(round, letter, shots)}
          />
        </>
      )}
    </li>
  );
}

function Count({
  names,
  sets,
  shown = false,
  onChange,
}: {
  names: string;
  sets: number;
  shown?: boolean;
  onChange: (by: number) => void;
}) {
  const t = words.value.settle;
  return (
    <div class="settle-count">
      <span class="grow break">{shown ? names : t.sets}</span>
      <Button aria-label={t.fewer(names)} disabled={sets === 0} onClick={() => onChange(-1)}>
        −
      </Button>
      <output class="number">{sets}</output>
      <Button aria-label={t.more(names)} onClick={() => onChange(1)}>
        +
      </Button>
    </div>
  );
}

/** A late or doubtful mark, for the coach to decide. */
function Doubt({ round, mark }: { round: OpenRound; mark: Mark }) {
  const t = words.value.settle;
  const at = words.value.clock(mark.second);
  const stands = mark.judged ?? !mark.late;
  return (
    <div class="settle-doubt">
      <span class="grow">
        {mark.late ? t.late(at) : t.doubtful(at)}
        {mark.player !== undefined && ` · ${namesOf([mark.player])}`}
      </span>
      <Button aria-pressed={stands} onClick={() => judge(round, mark.id, true)}>
        {t.keep}
      </Button>
      <Button aria-pressed={!stands} onClick={() => judge(round, mark.id, false)}>
        {t.strike}
      </Button>
    </div>
  );
}
