import { computed } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { restingIn } from '../../core/figures/counted.ts';
import { pairUsual } from '../../core/figures/usual.ts';
import type { OpenRound } from '../../core/ledger/practice.ts';
import { type Clock, endSecond, isOver } from '../../core/round/clock.ts';
import type { Mark, Tally } from '../../core/round/tally.ts';
import { now } from '../device/clock.ts';
import { prefs } from '../device/prefs.ts';
import { unsaved } from '../ledger.ts';
import { Letter } from '../parts/letter.tsx';
import { namesInRoles, namesOf, playerName } from '../parts/names.ts';
import { onTouch } from '../parts/on-touch.ts';
import { PairNames } from '../parts/pair-names.tsx';
import { shortName } from '../parts/short-name.ts';
import { history } from '../practices.ts';
import { words } from '../words/words.ts';
import { keyOf } from './keys.ts';
import {
  isSplit,
  marksOn,
  type Side,
  shownTallies,
  sidesOf,
  strikeOn,
  takeBackOn,
} from './sides.ts';
import { keysUsed } from './use-keys.ts';
import { useStrike } from './use-strike.ts';
import './tiles.css';

/**
 * One tile a pair; split into one a player where the drill counts for the player who struck.
 *
 * @param only the letters of the pairs that are shown; all of them where it is left out
 */
export function Tiles({
  round,
  clock,
  turned = false,
  only,
}: {
  round: OpenRound;
  clock: Clock;
  /** Whether the moment has passed at which roles turn. */
  turned?: boolean;
  only?: readonly string[] | undefined;
}) {
  const tallies = shownTallies(round, only);
  const sides = tallies.flatMap((tally) => sidesOf(round, tally));
  return (
    <div
      class="tiles"
      data-pairs={tallies.length}
      data-split={isSplit(round) || undefined}
      data-hand={prefs.value.hand}
    >
      {tallies.map((tally) => (
        <section
          key={tally.pair.letter}
          class="tile-pair"
          aria-label={namesInRoles(tally.pair.players, round.terms)}
        >
          {sidesOf(round, tally).map((side) => (
            <Tile
              key={side.player}
              round={round}
              clock={clock}
              tally={tally}
              side={side}
              turned={turned && tally.turned !== undefined}
              byKey={prefs.value.keys ? keyOf(sides, side) : undefined}
            />
          ))}
        </section>
      ))}
    </div>
  );
}

function Tile({
  round,
  clock,
  tally,
  side,
  byKey,
  turned,
}: {
  round: OpenRound;
  clock: Clock;
  tally: Tally;
  side: Side;
  byKey: string | undefined;
  turned: boolean;
}) {
  const t = words.value.court;
  const { letter, players } = tally.pair;
  const { player } = side;
  const own = player === undefined ? players : [player];
  const names = namesOf(own);
  const sets = player === undefined ? tally.sets : (tally.byPlayer?.[player] ?? 0);
  const marks = marksOn(round, side);
  const usual = useUsual(round, clock, tally);
  const { shown, struck, strike } = useStrike(sets, () => !isOver(clock, now()));
  return (
    <div class="tile" data-struck={struck || undefined}>
      <div class="tile-inside">
        <button
          type="button"
          class="tile-count"
          aria-keyshortcuts={byKey}
          {...onTouch(() => strike(strikeOn(round, side)))}
        >
          <span class="tile-names">
            {player === undefined || player === players[0] ? <Letter letter={letter} /> : null}
            <span class="tile-name">
              <PairNames players={own} terms={round.terms} turned={turned} />
            </span>
          </span>
          <span class="tile-room">
            <span class="tile-sets number" data-long={sets > 99 || undefined}>
              {shown}
              <span class="unseen"> {t.sets(sets)} </span>
            </span>
          </span>
          <span class="tile-state">
            {keysUsed.value && byKey !== undefined && (
              <span class="tile-key" aria-hidden="true">
                {byKey}
              </span>
            )}
            <Doubts marks={marks} />
            {player === undefined && usual !== undefined && (
              <span>{sets >= usual ? t.ahead(usual) : t.usual(usual)}</span>
            )}
            {player === undefined && <Resting players={players} sets={sets} />}
          </span>
        </button>
        <button
          type="button"
          class="tile-back"
          aria-label={t.takeBackOf(names)}
          disabled={marks.length === 0}
          onClick={() => takeBackOn(round, side)}
        >
          <Saved marks={marks} isShown={() => shown.value === sets} />
          <span>{t.takeBack}</span>
        </button>
      </div>
    </div>
  );
}

/** Who of a trio rests in the set that is being played. */
function Resting({ players, sets }: { players: readonly string[]; sets: number }) {
  const resting = restingIn(players, sets);
  if (resting === undefined) return null;
  const others = players.filter((player) => player !== resting).map(playerName);
  return <span>{words.value.court.rests(shortName(playerName(resting), others))}</span>;
}

/**
 * A ring while the last mark is being written, a full disc once it is on the disk. It turns with the
 * number, in the frame of the touch: no disc is full beside a number that is not on the disk.
 */
function Saved({ marks, isShown }: { marks: readonly Mark[]; isShown: () => boolean }) {
  const t = words.value.court;
  if (marks.length === 0) return null;
  const saved = computed(() => isShown() && !marks.some((mark) => unsaved.value.has(mark.id)));
  return (
    <span class="tile-saved" data-saved={computed(() => String(saved.value))}>
      <span class="unseen">{computed(() => (saved.value ? t.saved : t.saving))}</span>
    </span>
  );
}

function Doubts({ marks }: { marks: readonly Mark[] }) {
  const t = words.value.court;
  const late = marks.filter((mark) => mark.late).length;
  const doubtful = marks.filter((mark) => mark.doubtful && !mark.late).length;
  return (
    <>
      {late > 0 && <span class="tile-doubt">{t.late(late)}</span>}
      {doubtful > 0 && <span class="tile-doubt">{t.doubtful(doubtful)}</span>}
    </>
  );
}

/** The pair's own usual count for a round like this one; undefined where there was none. */
function useUsual(round: OpenRound, clock: Clock, { pair }: Tally): number | undefined {
  const past = history.value;
  const { terms } = round;
  const seconds = endSecond(clock);
  return useMemo(
    () => past && pairUsual(past, terms, pair.players, seconds),
    [past, terms.drill, seconds, pair.letter],
  );
}
