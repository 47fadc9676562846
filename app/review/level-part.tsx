import type { Family } from '../../core/drill/drill.ts';
import { toldLevel } from '../../core/figures/level.ts';
import type { LevelFit } from '../../core/figures/level-fit.ts';
import { untold } from '../../core/figures/level-untold.ts';
import { squad } from '../ledger.ts';
import { levels, targetLevels } from '../levels.ts';
import { namesOf, playerName } from '../parts/names.ts';
import { figureWords } from '../words/figure-words.ts';
import { kindName } from '../words/kind-name.ts';
import { LevelNow } from './level-now.tsx';

/** Everyone's level at each kind of work, in the squad's order; for the coach, with care. */
export function LevelPart() {
  const t = figureWords.value.review;
  const fits = [levels.value, targetLevels.value].flatMap((fit) => fit ?? []);
  return (
    <section class="part" aria-labelledby="levels">
      <h2 id="levels">{t.levels}</h2>
      <p>{t.levelsNote}</p>
      {fits.length === 0 && <p>{t.noLevel}</p>}
      {fits.flatMap((fit) =>
        [...fit.kinds.keys()].map((family) => (
          <KindLevels key={`${family} ${fit.onTarget}`} fit={fit} family={family} />
        )),
      )}
    </section>
  );
}

function KindLevels({ fit, family }: { fit: LevelFit; family: Family }) {
  const seen = fit.kinds.get(family)?.players;
  const places = [...squad.value.keys()];
  const players = [...(seen?.keys() ?? [])].sort((a, b) => placeIn(places, a) - placeIn(places, b));
  return (
    <div class="review-work">
      <h3>{kindName({ family, onTarget: fit.onTarget })}</h3>
      <dl class="review-figures">
        {players.map((player) => {
          const level = toldLevel(fit, player, family);
          return (
            level && (
              <div key={player}>
                <dt class="break">{playerName(player)}</dt>
                <dd>
                  <LevelNow level={level} />
                </dd>
              </div>
            )
          );
        })}
      </dl>
      {!fit.onTarget && <Untold fit={fit} family={family} />}
    </div>
  );
}

/** One whom the squad does not know comes last. */
const placeIn = (places: readonly string[], player: string) =>
  places.includes(player) ? places.indexOf(player) : places.length;

/** Whose part cannot be told from whose, in plain words. */
function Untold({ fit, family }: { fit: LevelFit; family: Family }) {
  const t = figureWords.value.review;
  const told = untold(fit, family);
  if (!told) return null;
  const { alone, neverParted, groups, classes } = told;
  return (
    <>
      {alone !== undefined && <p>{t.alone(playerName(alone))}</p>}
      {neverParted.map(([one, other]) => (
        <p key={`${one} ${other}`}>{t.neverPartedBoth(playerName(one), playerName(other))}</p>
      ))}
      {groups.length > 1 ? (
        <p>{t.groups(groups.map(namesOf))}</p>
      ) : (
        neverParted.length === 0 && classes.length > 1 && <p>{t.classes(classes.map(namesOf))}</p>
      )}
    </>
  );
}
