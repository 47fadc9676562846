import { type Family, families } from '../../core/drill/drill.ts';
import { type Level, toldLevel } from '../../core/figures/level.ts';
import type { LevelFit } from '../../core/figures/level-fit.ts';
import { changeWord } from '../../core/figures/level-word.ts';
import { type TrendWord, trendWords } from '../../core/figures/trend.ts';
import { waiting } from '../estimates.ts';
import { squad } from '../ledger.ts';
import { levels } from '../levels.ts';
import { FiguresPage } from '../parts/figures-page.tsx';
import { Notice } from '../parts/notice.tsx';
import { trendOf } from '../player-trends.ts';
import { href } from '../route.ts';
import { figureWords } from '../words/figure-words.ts';
import { lookWords } from '../words/look-words.ts';
import { words } from '../words/words.ts';
import { Glyph, WordMark } from './glyph.tsx';
import { type LevelScale, levelScale } from './level-scale.ts';
import './glance.css';

/**
 * Players down, kinds of work across, in the squad's order: each level with how sure it is and which
 * way it goes, said by form. For the coach; no ranking.
 */
export function GlanceScreen() {
  const t = lookWords.value.glance;
  return (
    <FiguresPage title={t.title} class="glance">
      {() => (levels.value ? <Squad fit={levels.value} /> : <p>{t.nothing}</p>)}
    </FiguresPage>
  );
}

function Squad({ fit }: { fit: LevelFit }) {
  const t = lookWords.value.glance;
  const players = [...squad.value.values()].filter(({ resting }) => !resting);
  const levelsOf = new Map(
    players.map(({ id }) => [id, families.map((family) => toldLevel(fit, id, family))]),
  );
  const scales = families.map((_, at) => levelScale([...levelsOf.values()].map((own) => own[at])));
  // Too few are known as long as some are being worked out.
  const wordOf = (player: string, family: Family): TrendWord =>
    trendOf(player, { family, onTarget: false })?.word ?? 'too-few';
  const overallOf = (player: string): TrendWord =>
    waiting.value > 0 ? 'too-few' : changeWord(fit, player);
  return (
    <>
      {waiting.value > 0 && <Notice>{figureWords.value.beingWorkedOut(waiting.value)}</Notice>}
      <table class="glance-table">
        <thead>
          <tr>
            <th scope="col">{t.player}</th>
            <th scope="col" aria-label={t.allLong}>
              {t.all}
            </th>
            {families.map((family) => (
              <th key={family} scope="col" aria-label={words.value.families[family]}>
                {t.kinds[family]}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {players.map(({ id, name }) => (
            <tr key={id}>
              <th scope="row">
                <a href={href('line', id)}>{name}</a>
              </th>
              <td>
                <Overall player={id} name={name} word={overallOf(id)} />
              </td>
              {families.map((family, at) => (
                <td key={family}>
                  <Cell
                    {...{ player: id, name, family }}
                    scale={scales[at]}
                    level={levelsOf.get(id)?.[at]}
                    word={wordOf(id, family)}
                  />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <p class="small">{t.key}</p>
      <ul class="glance-key small">
        {trendWords.map((word) => (
          <li key={word}>
            <WordMark word={word} /> {figureWords.value.trendWords[word]}
          </li>
        ))}
      </ul>
    </>
  );
}

function Overall({ player, name, word }: { player: string; name: string; word: TrendWord }) {
  const said = figureWords.value.trendWords[word];
  return (
    <a
      class="glance-cell"
      href={href('line', player)}
      aria-label={lookWords.value.glance.overall(name, said)}
    >
      <WordMark word={word} />
    </a>
  );
}

function Cell({
  player,
  name,
  family,
  level,
  word,
  scale,
}: {
  player: string;
  name: string;
  family: Family;
  level: Level | undefined;
  word: TrendWord;
  scale: LevelScale | undefined;
}) {
  const { glance: t, percent } = lookWords.value;
  const kind = words.value.families[family];
  if (!level || !scale) return <span class="unseen">{t.unseen(name, kind)}</span>;
  const { share, low, high } = level;
  return (
    <a
      class="glance-cell"
      href={href('line', player, family)}
      aria-label={t.cell(
        name,
        kind,
        percent(share),
        percent(low),
        percent(high),
        figureWords.value.trendWords[word],
      )}
    >
      <Glyph level={level} word={word} scale={scale} />
    </a>
  );
}
