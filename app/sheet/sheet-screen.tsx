import type { Drill } from '../../core/drill/drill.ts';
import { plannedMinutes, plannedRounds, type Step } from '../../core/round/block.ts';
import { currentPlan } from '../actions.ts';
import { comingRound } from '../coming-round.ts';
import { today } from '../device/clock.ts';
import { library } from '../ledger.ts';
import { Button } from '../parts/button.tsx';
import { BlockCautions, DrillCautions } from '../parts/cautions.tsx';
import { Messages } from '../parts/messages.tsx';
import { Pairs } from '../parts/pairs.tsx';
import { setupOf } from '../parts/setup.ts';
import { SquadCourt, squadLanes } from '../parts/squad-court.tsx';
import { go } from '../route.ts';
import { instructionsOf, rolesLines } from '../words/drill-instructions.ts';
import { textOf } from '../words/drill-text.ts';
import { planningWords } from '../words/planning-words.ts';
import { words } from '../words/words.ts';
import './sheet.css';
import { TallyBoxes } from './tally-boxes.tsx';

/** The whole block on one sheet of paper: its drills, the pairs and what to take care of. */
export function SheetScreen() {
  const t = planningWords.value.sheet;
  const plan = currentPlan();
  const steps = plan.steps.flatMap((step) => {
    const drill = library.value.drills.get(step.drill);
    return drill ? [{ step, drill }] : [];
  });
  const coming = comingRound.value;
  return (
    <main class="page sheet">
      <header>
        <div>
          <h1>{t.title}</h1>
          <p>
            {words.value.date(today())} · {words.value.today.rounds(plannedRounds(plan))} ·{' '}
            {words.value.minutes(plannedMinutes(plan))}
          </p>
        </div>
        <Button onClick={() => go()}>{words.value.back}</Button>
      </header>
      <div class="no-print">
        <Messages />
      </div>
      {steps.length === 0 ? (
        <p>{t.empty}</p>
      ) : (
        <>
          <Button as="main" onClick={() => print()}>
            {t.print}
          </Button>
          <div class="sheet-top">
            <BlockCautions />
            {coming && (
              <section class="sheet-pairs">
                <h2>{t.pairs}</h2>
                <Pairs pairs={coming.pairs} terms={coming.drill} courts={coming.courts} />
              </section>
            )}
          </div>
          <ol class="sheet-drills" data-many={steps.length > 4 || undefined}>
            {steps.map(({ step, drill }, index) => (
              <li key={index}>
                <SheetDrill step={step} drill={drill} seconds={plan.seconds} number={index + 1} />
              </li>
            ))}
          </ol>
          <TallyBoxes steps={steps} pairs={coming?.pairs} />
        </>
      )}
    </main>
  );
}

function SheetDrill({
  step,
  drill,
  seconds,
  number,
}: {
  step: Step;
  drill: Drill;
  seconds: number;
  number: number;
}) {
  const t = planningWords.value.sheet;
  const text = textOf(drill);
  const { feed, counts, ...roles } = instructionsOf(drill);
  const tasks = rolesLines(roles);
  const setup = setupOf(drill);
  return (
    <section class="sheet-drill" aria-label={text.name}>
      <SquadCourt drill={drill} />
      <div class="sheet-facts">
        <h2 class="break">
          {number}. {text.name}
        </h2>
        <p>
          <b class="number">{t.rounds(step.rounds, planningWords.value.block.seconds(seconds))}</b>,{' '}
          {t[step.partners]}, {t.perCourt(squadLanes(drill).length)}
        </p>
        {text.intention && <p class="sheet-intention">{text.intention}</p>}
        {text.cue && (
          <p>
            <b>{text.cue}</b>
          </p>
        )}
        <p>
          <b>{words.value.setCounts(drill.rule, step.size ?? drill.size)}.</b> {counts}
        </p>
        {tasks.length > 0 && <p>{tasks.join(' · ')}</p>}
        {feed && <p>{feed}</p>}
        {setup.map((line, at) => (
          <p key={at}>▲ {line}</p>
        ))}
        <DrillCautions shots={drill.shots} />
      </div>
    </section>
  );
}
