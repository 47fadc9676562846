import { signal } from '@preact/signals';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { sumEstimates } from '../../core/figures/all-touches.ts';
import { lastDay } from '../../core/figures/last-day.ts';
import { tellOwnDay } from '../../core/figures/own-day-told.ts';
import { byWork } from '../../core/figures/review.ts';
import { countedAs, playerStints, type Stint } from '../../core/figures/stints.ts';
import { type OwnWork, ownDay } from '../../core/figures/usual.ts';
import type { Summary } from '../../core/ledger/summary.ts';
import { currentRound, isRunning } from '../actions.ts';
import { today } from '../device/clock.ts';
import { prefs, setPrefs } from '../device/prefs.ts';
import { estimated } from '../estimates.ts';
import { GiveCard } from '../handover/give-card.tsx';
import { squad } from '../ledger.ts';
import { Bar } from '../parts/bar.tsx';
import { Button } from '../parts/button.tsx';
import { Touches } from '../parts/figure.tsx';
import { Fold } from '../parts/fold.tsx';
import { HoldButton } from '../parts/hold-button.tsx';
import { playerName } from '../parts/names.ts';
import { Reading } from '../parts/reading.tsx';
import { Trends } from '../parts/trends.tsx';
import { history, openPractice } from '../practices.ts';
import { OwnQuality } from '../quality/own-quality.tsx';
import { href } from '../route.ts';
import { figureWords } from '../words/figure-words.ts';
import { kindName } from '../words/kind-name.ts';
import { lookWords } from '../words/look-words.ts';
import { words } from '../words/words.ts';
import { OwnDrill } from './own-drill.tsx';
import { OwnPicture } from './own-picture.tsx';
import { OwnSentences } from './own-sentences.tsx';
import './player.css';

/**
 * One player's own day, and nobody else's. What leads on from it comes with the figures, which would
 * push it from under a finger. Handed to the player it is all that the phone shows:
 * nothing on it can be changed and nothing leads away, until the coach takes the phone back.
 */
export function PlayerScreen({ player }: { player: string }) {
  const t = lookWords.value.player;
  const handed = prefs.value.handedTo !== undefined;
  const known = squad.value.has(player);
  const day = known ? lastDay(played(), player) : undefined;
  return (
    <>
      <main class="page">
        <header class="player-head">
          <Name handed={handed}>{playerName(player)}</Name>
          {day && (
            <p class="faint">
              {day.day.date === today() ? t.today : words.value.date(day.day.date)}
            </p>
          )}
        </header>
        {!known ? (
          <p>{t.notHere}</p>
        ) : history.value === undefined ? (
          <Reading />
        ) : day ? (
          <>
            <OwnDay day={day.day} earlier={day.earlier} player={player} handed={handed} />
            <OwnQuality player={player} />
          </>
        ) : (
          <p>{t.nothing}</p>
        )}
        {!handed && known && history.value && (
          <div class="stack">
            <Button onClick={() => setPrefs({ handedTo: player })}>
              <span class="break">{t.hand(playerName(player))}</span>
            </Button>
            <p class="small faint">{t.handNote}</p>
            <GiveCard player={player} />
            <a class="button" href={href('review', player)}>
              <span class="break">{figureWords.value.review.openPlayer(playerName(player))}</span>
            </a>
          </div>
        )}
      </main>
      {handed ? (
        <footer class="player-coach">
          <HoldButton onHeld={() => setPrefs({ handedTo: undefined })}>
            {words.value.forCoach}
          </HoldButton>
        </footer>
      ) : (
        <Bar />
      )}
    </>
  );
}

/** A round that is still being played stands beside nothing: half a round is not a slow one. */
function played(): Summary[] {
  const round = currentRound(openPractice.value);
  const running = isRunning(round) ? round?.id : undefined;
  return estimated.value.map((summary) => ({
    ...summary,
    rounds: summary.rounds.filter(({ id }) => id !== running),
  }));
}

/**
 * The page begins again at its name when the phone changes hands: before it is seen, for a focus
 * that moves later would take the hold from under the coach's finger.
 */
function Name({ children, handed }: { children: string; handed: boolean }) {
  const heading = useRef<HTMLHeadingElement>(null);
  const before = useRef(handed);
  useLayoutEffect(() => {
    if (before.current === handed) return;
    before.current = handed;
    heading.current?.focus();
    scrollTo(0, 0);
  }, [handed]);
  return (
    <h1 class="break" ref={heading} tabIndex={-1}>
      {children}
    </h1>
  );
}

/** Every number is for the coach, and folded away; a phone in a child's hands has none of it. */
const open = signal(false);

function OwnDay({
  day,
  earlier,
  player,
  handed,
}: {
  day: Summary;
  earlier: Summary[];
  player: string;
  handed: boolean;
}) {
  const works = ownDay(earlier, day, player);
  const stints = playerStints([day]).get(player) ?? [];
  const told = tellOwnDay(works);
  return (
    <>
      <OwnPicture works={told.works} />
      <OwnSentences told={told} touches={sumEstimates(stints)} />
      {!handed && (
        <Fold title={lookWords.value.player.forCoach} open={open}>
          <OwnNumbers {...{ works, stints, player }} />
        </Fold>
      )}
    </>
  );
}

function OwnNumbers({
  works,
  stints,
  player,
}: {
  works: OwnWork[];
  stints: Stint[];
  player: string;
}) {
  const t = lookWords.value.player;
  const f = figureWords.value;
  const kinds = byWork(stints);
  const touches = sumEstimates(stints);
  return (
    <>
      <section class="part" aria-labelledby="touches">
        <h2 id="touches">{t.touches}</h2>
        <p class="own-total">
          <Touches touches={touches} />
        </p>
        {!touches.all && <p>{f.afterSettle}</p>}
        <p>{t.countedNote}</p>
        {kinds.length > 1 && (
          <dl class="own-kinds">
            {kinds.map((kind) => (
              <div key={kindName(kind)}>
                <dt>{kindName(kind)}</dt>
                <dd>
                  <Touches touches={sumEstimates(kind.stints)} />
                </dd>
              </div>
            ))}
          </dl>
        )}
      </section>
      {works.map((work) => (
        <OwnDrill
          key={countedAs(work.terms)}
          work={work}
          stints={stints.filter((stint) => stint.countedAs === countedAs(work.terms))}
        />
      ))}
      {works.some((work) => work.usual !== undefined) && <p class="faint">{t.besideNote}</p>}
      <Trends player={player} note={f.player.trendsNote} />
    </>
  );
}
