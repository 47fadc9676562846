import { useMemo, useState } from 'preact/hooks';
import { type Drill, families } from '../../core/drill/drill.ts';
import { drillsOn } from '../../core/ledger/library.ts';
import { fittingSize } from '../../core/planning/fitting-size.ts';
import { withAsked } from '../../core/planning/next-asks.ts';
import { type Proposal, proposeBlock, type Reason } from '../../core/planning/propose-block.ts';
import { plannedMinutes, plannedRounds, USUAL_MINUTES } from '../../core/round/block.ts';
import { currentPlan, plan as put } from '../actions.ts';
import { today } from '../device/clock.ts';
import { paceNow } from '../estimates.ts';
import { append, library, squad, squadSettings } from '../ledger.ts';
import { levels } from '../levels.ts';
import { asked } from '../next-asks.ts';
import { Button } from '../parts/button.tsx';
import { CourtsAsked } from '../parts/courts-asked.tsx';
import { Messages } from '../parts/messages.tsx';
import { Notice } from '../parts/notice.tsx';
import { Reading } from '../parts/reading.tsx';
import { Stepper } from '../parts/stepper.tsx';
import { Waiting } from '../parts/waiting.tsx';
import { history, openPractice, summaries } from '../practices.ts';
import { go } from '../route.ts';
import { textOf } from '../words/drill-text.ts';
import { focusQuestion } from '../words/focus-question.ts';
import { planningWords } from '../words/planning-words.ts';
import { words } from '../words/words.ts';
import './propose.css';

/** The block that the ledger speaks for, with why; taken with one tap. */
export function ProposeScreen() {
  const t = planningWords.value.propose;
  return (
    <main class="page">
      <header>
        <h1>{t.title}</h1>
        <Button onClick={() => go()}>{words.value.back}</Button>
      </header>
      <Messages />
      <CourtsAsked />
      {history.value === undefined ? (
        <Reading />
      ) : (
        <>
          <Proposing />
          <Choosing />
        </>
      )}
    </main>
  );
}

const SHORTEST_MINUTES = 5;
const LONGEST_MINUTES = 60;
/** In the middle of the usual 20 to 30. */
const USUAL = (USUAL_MINUTES.least + USUAL_MINUTES.most) / 2;
const STEP_MINUTES = 5;

function Proposing() {
  const t = planningWords.value.propose;
  const [minutes, setMinutes] = useState(USUAL);
  const [skip, setSkip] = useState(0);
  const { seconds, changeover } = currentPlan();
  const here = openPractice.value?.here ?? [];
  const { courts, size } = squadSettings.value;
  const proposal = useMemo(
    () =>
      proposeBlock({
        minutes,
        seconds,
        changeover,
        here,
        courts,
        size,
        drills: withAsked(drillsOn(library.value), asked.value.drills),
        sizeOf: (drill) => sizeForThose(drill, here, seconds),
        summaries: summaries.value,
        today: today(),
        skip,
      }),
    [
      minutes,
      seconds,
      changeover,
      here.join(),
      courts,
      size,
      library.value,
      summaries.value,
      asked.value,
      levels.value,
      skip,
    ],
  );
  return (
    <section class="part">
      <div class="row propose-minutes">
        <span class="grow">
          <b>{t.minutes}</b>
        </span>
        <Stepper
          label={t.minutes}
          value={minutes}
          least={SHORTEST_MINUTES}
          most={LONGEST_MINUTES}
          by={STEP_MINUTES}
          onChange={(chosen) => {
            setMinutes(chosen);
            setSkip(0);
          }}
        />
      </div>
      {proposal ? (
        <Proposed proposal={proposal} number={skip + 1} />
      ) : (
        <Notice>{skip === 0 ? t.nothing : t.noMore}</Notice>
      )}
      <div class="row">
        <Button disabled={!proposal} onClick={() => setSkip(skip + 1)}>
          {t.another}
        </Button>
        {skip > 0 && <Button onClick={() => setSkip(0)}>{t.first}</Button>}
      </div>
    </section>
  );
}

/** The size for those who are here, or for the squad where nobody is yet. */
function sizeForThose(drill: Drill, here: readonly string[], seconds: number): number | undefined {
  const all = [...squad.value.values()].filter(({ resting }) => !resting).map(({ id }) => id);
  const those = here.length > 1 ? here : all;
  return fittingSize(levels.value, drill, those, seconds, paceNow(drill.id));
}

function Proposed({ proposal, number }: { proposal: Proposal; number: number }) {
  const t = planningWords.value.propose;
  const { plan, steps } = proposal;
  return (
    <>
      <p role="status">
        {words.value.named(t.number(number), words.value.today.rounds(plannedRounds(plan)))},{' '}
        <b class="number">{words.value.minutes(plannedMinutes(plan))}</b>
      </p>
      <ol class="propose-steps">
        {steps.map(({ step, reason }) => {
          const drill = library.value.drills.get(step.drill);
          return (
            <li key={step.drill}>
              <b class="grow break">{drill ? textOf(drill).name : step.drill}</b>
              <span class="number">× {step.rounds}</span>
              {drill && <Waiting drill={drill} />}
              <span class="propose-why small">{reasonOf(reason)}</span>
              {drill && step.size !== undefined && (
                <span class="propose-why small">{t.sized(step.size, drill.size)}</span>
              )}
            </li>
          );
        })}
      </ol>
      {plan.focus !== undefined && <p>{t.why.slipping(focusQuestion(plan.focus))}</p>}
      <Button
        as="main"
        onClick={() => {
          const { focus, checks } = currentPlan();
          put({
            ...(focus !== undefined && { focus }),
            ...(checks !== undefined && { checks }),
            ...plan,
          });
          go();
        }}
      >
        {t.take}
      </Button>
      <p class="small">{t.takeMeans}</p>
    </>
  );
}

/** Why a drill is in, in one line. */
function reasonOf(reason: Reason): string {
  const t = planningWords.value.propose.why;
  switch (reason.why) {
    case 'never':
      return t.never(words.value.families[reason.family]);
    case 'overdue':
      return t.overdue(words.value.families[reason.family], reason.days);
    case 'slipping':
      return t.slipping(focusQuestion(reason.focus));
    case 'hard':
      return t.hard(reason.without, reason.counts);
    case 'role':
      return t.role(
        planningWords.value.coverage.strokes[reason.stroke],
        reason.players.length,
        reason.days,
      );
    case 'balance':
      return t.balance(words.value.families[reason.family], reason.days);
  }
}

/** Which drills may be proposed. */
function Choosing() {
  const t = planningWords.value.propose;
  const { drills, off } = library.value;
  return (
    <details class="part propose-choosing">
      <summary>
        {t.drills}{' '}
        <span class="number">{t.drillsOn(drillsOn(library.value).length, drills.size)}</span>
      </summary>
      <p class="small">{t.drillsMean}</p>
      {families.map((family) => (
        <div key={family} class="stack">
          <h2>{words.value.families[family]}</h2>
          <ul class="propose-drills">
            {[...drills.values()]
              .filter((drill) => drill.family === family)
              .map((drill) => (
                <li key={drill.id}>
                  <button
                    type="button"
                    class="choice"
                    aria-pressed={!off.has(drill.id)}
                    onClick={() =>
                      append({ kind: 'drill-switched', drill: drill.id, on: off.has(drill.id) })
                    }
                  >
                    <span class="break">{textOf(drill).name}</span>
                  </button>
                </li>
              ))}
          </ul>
        </div>
      ))}
    </details>
  );
}
