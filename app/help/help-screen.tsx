import { starterDrills } from '../../core/drill/starter-drills.ts';
import { Bar } from '../parts/bar.tsx';
import { Button } from '../parts/button.tsx';
import { CourtDrawing } from '../parts/court-drawing.tsx';
import { Letter } from '../parts/letter.tsx';
import { go } from '../route.ts';
import { deskWords } from '../words/desk-words.ts';
import { words } from '../words/words.ts';
import '../court/tiles.css';
import './help.css';

/** The drill whose card explains cards: both roles, a target and markers are on it. */
const EXAMPLE = starterDrills.find((drill) => drill.target && drill.markers.length > 0);

/** How to, short and offline; what is pictured is drawn by the parts it speaks of. */
export function HelpScreen() {
  const t = deskWords.value.help;
  const steps = [t.here, t.block, t.pairs, t.card, t.count, t.settle, t.after];
  return (
    <>
      <main class="page">
        <header>
          <h1>{t.title}</h1>
          <Button onClick={() => go()}>{words.value.done}</Button>
        </header>
        <section class="part">
          <h2>{t.steps}</h2>
          <ol class="help-steps">
            {steps.map((step, index) => (
              <li key={step}>
                <b class="number">{index + 1}</b>
                <span>{step}</span>
              </li>
            ))}
          </ol>
        </section>
        <section class="part">
          <h2>{t.tile}</h2>
          <div class="help-tile" aria-hidden="true">
            <span class="tile-names">
              <Letter letter="D" />
            </span>
            <span class="number">4</span>
            <span class="help-back">
              <span class="tile-saved" data-saved="true" />
              <b>−1</b>
            </span>
          </div>
          <p>{t.tileMeans}</p>
          <dl class="help-signs">
            <dt>
              <span class="tile-saved" data-saved="false" />
              <span class="unseen">{words.value.court.saving}</span>
            </dt>
            <dd>{t.waits}</dd>
            <dt>
              <span class="tile-saved" data-saved="true" />
              <span class="unseen">{words.value.court.saved}</span>
            </dt>
            <dd>{t.saved}</dd>
            <dt class="tile-doubt">{words.value.court.late(1)}</dt>
            <dd>{t.late}</dd>
            <dt class="tile-doubt">{words.value.court.doubtful(1)}</dt>
            <dd>{t.doubtful}</dd>
          </dl>
          <p>{t.keys}</p>
        </section>
        {EXAMPLE && (
          <section class="part">
            <h2>{t.court}</h2>
            <div class="help-card">
              <CourtDrawing drill={EXAMPLE} label={t.cardMeans} />
            </div>
            <p>{t.cardMeans}</p>
          </section>
        )}
      </main>
      <Bar />
    </>
  );
}
