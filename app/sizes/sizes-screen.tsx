import { takesAdvice } from '../../core/drill/counting-rules.ts';
import { lastWeeks, reviewDrills } from '../../core/figures/review.ts';
import { FITTING_SETS } from '../../core/figures/size-fit.ts';
import { pairStints } from '../../core/figures/stints.ts';
import { currentPlan } from '../actions.ts';
import { estimated } from '../estimates.ts';
import { SetSize } from '../evening/deeds.tsx';
import { fits, SIZE_WEEKS } from '../evening/known.ts';
import { SizePicture } from '../evening/pictures.tsx';
import { Explained } from '../parts/explained.tsx';
import { FiguresPage } from '../parts/figures-page.tsx';
import { drillName } from '../words/drill-text.ts';
import { lookWords } from '../words/look-words.ts';
import './sizes.css';

/** For every drill that was played lately whether it was too hard or too easy, and the size that fits. */
export function SizesScreen() {
  return <FiguresPage title={lookWords.value.sizes.title}>{() => <Sizes />}</FiguresPage>;
}

function Sizes() {
  const t = lookWords.value.sizes;
  return (
    <>
      <p class="small">{t.means(FITTING_SETS.least, FITTING_SETS.most)}</p>
      {fits.value.length === 0 && <p>{t.none}</p>}
      <ul>
        {fits.value.map((fit) => (
          <li key={fit.terms.drill} class="size-fit">
            <h2 class="break">{drillName(fit.terms)}</h2>
            <div class="size-fit-said">
              <SizePicture sets={fit.expected} />
              <p class="grow">
                <Explained of="size">
                  <b>{t.verdicts[fit.verdict]}</b>
                  <br />
                  {t.line(fit.terms.size, fit.expected)}
                  {fit.size !== fit.terms.size && (
                    <>. {t[fit.verdict === 'fits' ? 'nearer' : 'fitting'](fit.size, fit.fitting)}</>
                  )}
                </Explained>
              </p>
            </div>
            {fit.verdict !== 'fits' && <SetSize fit={fit} />}
          </li>
        ))}
      </ul>
      <Others />
    </>
  );
}

/** Drills whose sets have a length of their own, or none: how many a round gave. */
function Others() {
  const t = lookWords.value.sizes;
  const { now } = lastWeeks(estimated.value, SIZE_WEEKS);
  const drills = reviewDrills(pairStints(now)).filter(({ terms }) => !takesAdvice(terms.rule));
  if (drills.length === 0) return null;
  const minutes = currentPlan().seconds / 60;
  return (
    <section class="part" aria-labelledby="others">
      <h2 id="others">{t.others}</h2>
      <ul class="ruled size-others">
        {drills.map(({ terms, rates }) => (
          <li key={`${terms.drill} ${terms.rule}`}>
            <span class="grow break">{drillName(terms)}</span>
            {rates.perMinute && <span>{t.perRound(rates.perMinute.rate * minutes)}</span>}
          </li>
        ))}
      </ul>
    </section>
  );
}
