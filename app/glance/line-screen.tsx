import { type Family, families } from '../../core/drill/drill.ts';
import { LATELY_WEEKS } from '../../core/figures/lately.ts';
import { toldLevel } from '../../core/figures/level.ts';
import type { LevelFit } from '../../core/figures/level-fit.ts';
import { levelLine } from '../../core/figures/level-line.ts';
import { changeWord } from '../../core/figures/level-word.ts';
import { type PracticePoint, practiceTrend } from '../../core/figures/practice-trend.ts';
import { lastWeeks } from '../../core/figures/review.ts';
import { isOnTarget, playerStints } from '../../core/figures/stints.ts';
import { estimated, waiting } from '../estimates.ts';
import { squad } from '../ledger.ts';
import { levels, targetLevels } from '../levels.ts';
import { Explained } from '../parts/explained.tsx';
import { FiguresPage } from '../parts/figures-page.tsx';
import { playerName } from '../parts/names.ts';
import { trendOf, trends } from '../player-trends.ts';
import { href } from '../route.ts';
import { figureWords } from '../words/figure-words.ts';
import { kindName } from '../words/kind-name.ts';
import { lookWords } from '../words/look-words.ts';
import { LineChart } from './line-chart.tsx';
import './line.css';

/** A player's line over the last twelve weeks with its band, the practices as dots; all kinds, or one. */
export function LineScreen({
  player,
  kind,
  target,
}: {
  player: string;
  kind?: string | undefined;
  target?: string | undefined;
}) {
  const t = lookWords.value.line;
  const family = families.find((each) => each === kind);
  const onTarget = target !== undefined;
  const fit = onTarget ? targetLevels.value : levels.value;
  return (
    <FiguresPage
      title={playerName(player)}
      beside={
        <a class="button" href={href('glance')}>
          {lookWords.value.glance.title}
        </a>
      }
    >
      {() =>
        squad.value.has(player) ? (
          <>
            {fit ? <Line {...{ fit, player, family }} /> : <p>{t.unseen}</p>}
            <Kinds player={player} family={family} onTarget={onTarget} />
            <a class="button" href={href('review', player)}>
              <span class="break">{figureWords.value.review.openPlayer(playerName(player))}</span>
            </a>
          </>
        ) : (
          <p>{figureWords.value.review.notHere}</p>
        )
      }
    </FiguresPage>
  );
}

/** Every kind of work that was seen of the player, all of them first. */
function Kinds({
  player,
  family,
  onTarget,
}: {
  player: string;
  family: Family | undefined;
  onTarget: boolean;
}) {
  const seen = [levels.value, targetLevels.value].flatMap((fit) =>
    [...(fit?.kinds ?? [])]
      .filter(([, { players }]) => players.has(player))
      .map(([kind]) => ({ family: kind, onTarget: fit?.onTarget ?? false })),
  );
  const to = (each: (typeof seen)[number]) =>
    href('line', player, each.family, ...(each.onTarget ? ['target'] : []));
  return (
    <nav class="line-kinds no-print" aria-label={lookWords.value.line.kinds}>
      <a href={href('line', player)} aria-current={family === undefined ? 'page' : undefined}>
        {lookWords.value.glance.allLong}
      </a>
      {seen.map((each) => (
        <a
          key={kindName(each)}
          href={to(each)}
          aria-current={each.family === family && each.onTarget === onTarget ? 'page' : undefined}
        >
          {kindName(each)}
        </a>
      ))}
    </nav>
  );
}

function Line({
  fit,
  player,
  family,
}: {
  fit: LevelFit;
  player: string;
  family: Family | undefined;
}) {
  const { line: t, percent } = lookWords.value;
  const line = levelLine(fit, { player, ...(family && { kind: family }) });
  const now = line?.at(-1);
  const tells = (family ? [family] : [...fit.kinds.keys()]).some((kind) =>
    toldLevel(fit, player, kind),
  );
  if (!line || !now || !tells) return <p>{t.unseen}</p>;
  const points = family
    ? trendOf(player, { family, onTarget: fit.onTarget })?.points
    : pointsOfAll(player, fit.onTarget);
  const said = fit.onTarget ? t.saysOnTarget : t.says;
  return (
    <section class="part" aria-labelledby="line">
      <h2 id="line">
        {family ? kindName({ family, onTarget: fit.onTarget }) : lookWords.value.glance.allLong}
      </h2>
      <p>
        <Explained of="level">
          {said(percent(now.share), percent(now.low), percent(now.high))}
        </Explained>
      </p>
      <LineChart line={line} points={points ?? []} end={estimated.value.at(-1)?.date ?? ''} />
      {trends.value ? (
        <Word {...{ fit, player, family }} />
      ) : (
        <p role="status">{figureWords.value.beingWorkedOut(waiting.value)}</p>
      )}
      <p class="small faint">{t.means}</p>
    </section>
  );
}

/** The practices as dots, of all kinds of work together. */
function pointsOfAll(player: string, onTarget: boolean): PracticePoint[] {
  const { now } = lastWeeks(estimated.value, LATELY_WEEKS);
  const own = playerStints(now).get(player) ?? [];
  return practiceTrend(own.filter((stint) => isOnTarget(stint) === onTarget)).points;
}

/** Which way it goes and over how many practices; of balls on target of one kind at a time only. */
function Word({
  fit,
  player,
  family,
}: {
  fit: LevelFit;
  player: string;
  family?: Family | undefined;
}) {
  const { line: t } = lookWords.value;
  const { trendWords } = figureWords.value;
  if (family) {
    const { word, points } = trendOf(player, { family, onTarget: fit.onTarget }) ?? {};
    if (!word || !points) return null;
    return (
      <p>
        <Explained of="trend">{t.word(trendWords[word], points.length)}</Explained>
      </p>
    );
  }
  if (fit.onTarget) return null;
  const practices = fit.players.get(player)?.practices ?? 0;
  return (
    <p>
      <Explained of="overall">
        {t.wordOverall(trendWords[changeWord(fit, player)], practices)}
      </Explained>
    </p>
  );
}
