import { type OpenRound, recordedIn } from '../../core/ledger/practice.ts';
import { isOver, isTooShort } from '../../core/round/clock.ts';
import { withPlayer } from '../../core/round/pairs.ts';
import type { Mark, Tally } from '../../core/round/tally.ts';
import {
  bestRun,
  correct,
  correctPairs,
  currentRound,
  judge,
  press,
  roundsLeft,
  showing,
} from '../actions.ts';
import { setRound } from '../coming-round.ts';
import { now } from '../device/clock.ts';
import { squad } from '../ledger.ts';
import { Button } from '../parts/button.tsx';
import { lazyPart } from '../parts/lazy.tsx';
import { Letter } from '../parts/letter.tsx';
import { Messages } from '../parts/messages.tsx';
import { namesOf, playerName } from '../parts/names.ts';
import { Notice } from '../parts/notice.tsx';
import { openPractice, roundAt } from '../practices.ts';
import { go, replace } from '../route.ts';
import { drillName } from '../words/drill-text.ts';
import { words } from '../words/words.ts';
import './settle.css';

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
  const onward = () => {
    if (roundsLeft(practice) > 0) setRound();
    replace('court');
  };
  const strike = () => {
    press('round-struck', round);
    if (isLatest) onward();
  };
  const settle = () => {
    press('round-settled', round);
    if (isLatest) onward();
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
        {round.tallies.map((tally) => (
          <PairRow key={tally.pair.letter} round={round} tally={tally} />
        ))}
      </ul>
      {round.aside && (
        <section class="part">
          <p>{t.aside}</p>
          <ul>
            {round.aside.map(({ pair, sets }) => (
              <li key={pair.letter} class="break">
                {t.asideOf(namesOf(pair.players), sets)}
              </li>
            ))}
          </ul>
        </section>
      )}
      <PutRight round={round} onStrike={strike} />
      <div class="before-start">
        <Button as="main" onClick={settle}>
          {isLatest && roundsLeft(practice) > 0 ? t.next : t.finish}
        </Button>
        {isLatest && (
          <Button
            as="quiet"
            onClick={() => {
              press('round-skipped', round);
              onward();
            }}
          >
            {t.skip}
          </Button>
        )}
      </div>
    </main>
  );
}

/** What is rarely wrong: who played, and whether the round should count at all. */
function PutRight({ round, onStrike }: { round: OpenRound; onStrike: () => void }) {
  const t = words.value.settle;
  const pairs = round.tallies.map(({ pair }) => pair);
  const inPairs = pairs.flatMap(({ players }) => players);
  const others = [...squad.value.keys()].filter((player) => !inPairs.includes(player));
  return (
    <details class="part">
      <summary>{t.wrongNames}</summary>
      <div class="stack">
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
        {!round.struck && <Button onClick={onStrike}>{t.strikeRound}</Button>}
      </div>
    </details>
  );
}

function PairRow({ round, tally }: { round: OpenRound; tally: Tally }) {
  const t = words.value.settle;
  const { letter, players } = tally.pair;
  const { rule, size } = round.terms;
  const doubts = (round.marks[letter] ?? []).filter(
    (mark) => !mark.takenBack && (mark.late || mark.doubtful),
  );
  return (
    <li class="part">
      <header>
        <Letter letter={letter} />
        <h2 class="grow break">{namesOf(players)}</h2>
      </header>
      {rule === 'on-target' ? (
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
        <Count
          names={namesOf(players)}
          sets={tally.sets}
          onChange={(by) => correct(round, letter, by)}
        />
      )}
      {tally.also?.map(({ phone, sets }) => (
        <Notice key={phone}>{t.also(sets)}</Notice>
      ))}
      {rule === 'in-a-row' && <SizeOff round={round} tally={tally} />}
      {doubts.map((mark) => (
        <Doubt key={mark.id} round={round} mark={mark} />
      ))}
      {rule !== 'on-target' && size > 1 && (
        <Shots
          name={t.showing}
          label={t.showingOf(namesOf(players))}
          value={tally.showing}
          most={size - 1}
          shown={(shots) => t.showingValue(shots, size)}
          onChange={(shots) => showing(round, letter, shots)}
        />
      )}
      {rule === 'in-a-row' && tally.sets === 0 && (
        <Shots
          name={t.best}
          label={t.bestOf(namesOf(players))}
          value={tally.best}
          most={size - 1}
          shown={(shots) => words.value.number(shots)}
          onChange={(shots) => bestRun(round, letter, shots)}
        />
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

/** Shots that may not have been seen: a dash unless they were said. */
function Shots({
  name,
  label,
  value,
  most,
  shown,
  onChange,
}: {
  name: string;
  label: string;
  value: number | undefined;
  most: number;
  shown: (shots: number) => string;
  onChange: (shots: number | undefined) => void;
}) {
  return (
    <label class="settle-shots">
      <span class="grow">{name}</span>
      <select
        aria-label={label}
        value={value ?? ''}
        onChange={({ currentTarget: { value } }) =>
          onChange(value === '' ? undefined : Number(value))
        }
      >
        <option value="">{words.value.settle.notSeen}</option>
        {Array.from({ length: most + 1 }, (_, shots) => (
          <option key={shots} value={shots}>
            {shown(shots)}
          </option>
        ))}
      </select>
    </label>
  );
}
