import { toldLevel } from '../../core/figures/level.ts';
import { changeOver } from '../../core/figures/level-change.ts';
import { differenceOfTwo } from '../../core/figures/level-difference.ts';
import type { LevelFit } from '../../core/figures/level-fit.ts';
import { changeWord } from '../../core/figures/level-word.ts';
import { waiting } from '../estimates.ts';
import { levels, targetLevels } from '../levels.ts';
import { Explained } from '../parts/explained.tsx';
import { playerName } from '../parts/names.ts';
import { figureWords } from '../words/figure-words.ts';
import { kindName } from '../words/kind-name.ts';
import { words } from '../words/words.ts';
import { LevelNow } from './level-now.tsx';

/** Over how many weeks a player's change is said. */
const WEEKS = 8;

/** A player's level at each kind of work, who is told apart from the player at it, and the change of all kinds. */
export function OwnLevelPart({ player }: { player: string }) {
  const t = figureWords.value.review;
  const own = [levels.value, targetLevels.value].flatMap((fit) =>
    [...(fit?.kinds.keys() ?? [])].flatMap((family) => {
      const level = fit && toldLevel(fit, player, family);
      return level ? [{ fit, family, level }] : [];
    }),
  );
  return (
    <section class="part" aria-labelledby="levels">
      <h2 id="levels">{t.levels}</h2>
      <p class="small">{t.levelsNote}</p>
      {own.length === 0 && <p>{t.noLevel}</p>}
      <dl class="review-figures">
        {own.map(({ fit, family, level }) => {
          const told = [...(fit.kinds.get(family)?.players.keys() ?? [])].flatMap((other) => {
            const two = differenceOfTwo(fit, player, other, family);
            return two?.toldApart ? [{ other, isAbove: two.mean > 0 }] : [];
          });
          const named = (isAbove: boolean) =>
            words.value.list(
              told.filter((each) => each.isAbove === isAbove).map(({ other }) => playerName(other)),
            );
          return (
            <div key={`${family} ${fit.onTarget}`}>
              <dt>{kindName({ family, onTarget: fit.onTarget })}</dt>
              <dd>
                <LevelNow level={level} />
                {named(true) && <p class="small">{t.above(named(true))}</p>}
                {named(false) && <p class="small">{t.below(named(false))}</p>}
              </dd>
            </div>
          );
        })}
        {levels.value && waiting.value === 0 && <OverAll fit={levels.value} player={player} />}
      </dl>
    </section>
  );
}

/** The word over all kinds of work, the practices it rests on, and how sure it is. */
function OverAll({ fit, player }: { fit: LevelFit; player: string }) {
  const { review: t, trendWords, practices } = figureWords.value;
  const word = changeWord(fit, player);
  const change = word === 'too-few' ? undefined : changeOver(fit, WEEKS, player);
  return (
    <div>
      <dt>{t.overall}</dt>
      <dd>
        <Explained of="overall">
          <b>{trendWords[word]}</b>, {practices(fit.players.get(player)?.practices ?? 0)}
          {change && <>, {t.roseWith(change.rise)}</>}
        </Explained>
      </dd>
    </div>
  );
}
