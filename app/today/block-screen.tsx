import { nanoid } from 'nanoid';
import { useState } from 'preact/hooks';
import { type Drill, families } from '../../core/drill/drill.ts';
import { nameFault } from '../../core/ledger/squad.ts';
import {
  type Plan,
  plannedMinutes,
  plannedRounds,
  type Step,
  standsToUsual,
  withoutNames,
} from '../../core/round/block.ts';
import { LONGEST_SECONDS, SHORTEST_SECONDS } from '../../core/round/clock.ts';
import { currentPlan, plan as put } from '../actions.ts';
import { append, library } from '../ledger.ts';
import { Button } from '../parts/button.tsx';
import { Foot } from '../parts/foot.tsx';
import { Messages } from '../parts/messages.tsx';
import { Notice } from '../parts/notice.tsx';
import { Stepper } from '../parts/stepper.tsx';
import { Waiting } from '../parts/waiting.tsx';
import { BlockFocus } from '../quality/block-focus.tsx';
import { go, href } from '../route.ts';
import { textOf } from '../words/drill-text.ts';
import { planningWords } from '../words/planning-words.ts';
import { words } from '../words/words.ts';
import { StepSize } from './step-size.tsx';
import './block.css';

/** Drills into the block, in order, with their rounds; lengths; blocks kept by name. */
export function BlockScreen() {
  const t = planningWords.value.block;
  const plan = currentPlan();
  const minutes = plannedMinutes(plan);
  return (
    <main class="page">
      <header>
        <h1>{t.title}</h1>
      </header>
      <Messages />
      <section class="part">
        <Button onClick={() => go('propose')}>{words.value.today.propose}</Button>
        <Steps plan={plan} />
        <div class="block-lengths">
          <span>{t.length}</span>
          <Stepper
            label={t.length}
            value={plan.seconds}
            shown={t.seconds(plan.seconds)}
            least={SHORTEST_SECONDS}
            most={LONGEST_SECONDS}
            by={30}
            onChange={(seconds) => put({ ...plan, seconds })}
          />
          <span>{t.changeover}</span>
          <Stepper
            label={t.changeover}
            value={plan.changeover}
            shown={t.seconds(plan.changeover)}
            least={0}
            most={300}
            by={15}
            onChange={(changeover) => put({ ...plan, changeover })}
          />
        </div>
        <p class="block-planned" role="status">
          <span>{t.planned}</span> <b class="number">{words.value.minutes(minutes)}</b>
          {plan.steps.length > 0 && (
            <span>
              {words.value.today.rounds(plannedRounds(plan))},{' '}
              {words.value.today.usualLength[standsToUsual(minutes)]}
            </span>
          )}
        </p>
      </section>
      <BlockFocus plan={plan} onChange={put} />
      <SavedBlocks plan={plan} />
      {families.map((family) => (
        <section key={family} class="part">
          <h2>{words.value.families[family]}</h2>
          <ul class="ruled">
            {[...library.value.drills.values()]
              .filter((drill) => drill.family === family)
              .map((drill) => (
                <DrillRow key={drill.id} drill={drill} plan={plan} />
              ))}
          </ul>
        </section>
      ))}
      <Button onClick={() => go('drill')}>{t.ownDrills}</Button>
      <Foot>
        <Button onClick={() => go()}>{words.value.done}</Button>
      </Foot>
    </main>
  );
}

function Steps({ plan }: { plan: Plan }) {
  const t = planningWords.value.block;
  const change = (steps: Step[]) => put({ ...plan, steps });
  if (plan.steps.length === 0) return <p>{t.empty}</p>;
  return (
    <ol class="block-steps">
      {plan.steps.map((step, index) => {
        const drill = library.value.drills.get(step.drill);
        const name = drill ? textOf(drill).name : step.drill;
        const replace = (next: Step) => change(plan.steps.with(index, next));
        return (
          <li key={index}>
            <b class="break">{name}</b>
            <div class="row">
              <Stepper
                label={t.rounds(name)}
                value={step.rounds}
                shown={`× ${step.rounds}`}
                least={1}
                most={10}
                onChange={(rounds) => replace({ ...step, rounds })}
              />
              <Button
                aria-label={words.value.named(t.partnersOf(name), t[step.partners])}
                onClick={() =>
                  replace({ ...step, partners: step.partners === 'keep' ? 'turn' : 'keep' })
                }
              >
                {words.value.named(t.partners, t[step.partners])}
              </Button>
              <Button
                aria-label={t.earlier(name)}
                disabled={index === 0}
                onClick={() =>
                  change(
                    plan.steps.with(index, plan.steps[index - 1] ?? step).with(index - 1, step),
                  )
                }
              >
                ↑
              </Button>
              <Button
                aria-label={t.remove(name)}
                onClick={() => change(plan.steps.toSpliced(index, 1))}
              >
                ×
              </Button>
            </div>
            {drill && (
              <StepSize
                step={step}
                drill={drill}
                seconds={plan.seconds}
                onSize={(size) => {
                  const { size: _, ...own } = step;
                  replace(size === undefined ? own : { ...own, size });
                }}
              />
            )}
          </li>
        );
      })}
    </ol>
  );
}

function DrillRow({ drill, plan }: { drill: Drill; plan: Plan }) {
  const t = planningWords.value.block;
  const text = textOf(drill);
  const rounds = plannedRounds({
    ...plan,
    steps: plan.steps.filter((step) => step.drill === drill.id),
  });
  return (
    <li class="block-drill">
      <a class="grow" href={href('drill', drill.id)}>
        <b class="break">{text.name}</b>
        <span class="small faint">{words.value.setCounts(drill.rule, drill.size)}</span>
        <Waiting drill={drill} />
        {rounds > 0 && <span class="small">{t.inBlock(rounds)}</span>}
      </a>
      <Button
        aria-label={t.add(text.name)}
        onClick={() =>
          put({
            ...plan,
            steps: [...plan.steps, { drill: drill.id, rounds: 1, partners: 'keep' }],
          })
        }
      >
        +
      </Button>
    </li>
  );
}

function SavedBlocks({ plan }: { plan: Plan }) {
  const t = planningWords.value.block;
  const [name, setName] = useState('');
  const [faulty, setFaulty] = useState(false);
  const blocks = [...library.value.blocks.values()];
  const keep = (event: Event) => {
    event.preventDefault();
    if (nameFault(name)) {
      setFaulty(true);
      return;
    }
    const same = blocks.find((block) => block.name === name.trim());
    append({ kind: 'block-kept', block: same?.id ?? nanoid(10), name, plan: withoutNames(plan) });
    setName('');
    setFaulty(false);
  };
  if (blocks.length === 0 && plan.steps.length === 0) return null;
  return (
    <section class="part">
      <h2>{t.kept}</h2>
      {blocks.length > 0 && (
        <ul class="ruled">
          {blocks.map((block) => (
            <li key={block.id}>
              <span class="grow break">
                {block.name}{' '}
                <span class="small faint">{words.value.minutes(plannedMinutes(block.plan))}</span>
              </span>
              <Button aria-label={t.use(block.name)} onClick={() => put(withoutNames(block.plan))}>
                {t.useIt}
              </Button>
              <Button
                aria-label={t.drop(block.name)}
                onClick={() => append({ kind: 'block-dropped', block: block.id })}
              >
                ×
              </Button>
            </li>
          ))}
        </ul>
      )}
      {plan.steps.length > 0 && (
        <form class="stack" onSubmit={keep}>
          <label>
            {t.keepAs}
            <input value={name} onInput={(event) => setName(event.currentTarget.value)} />
          </label>
          {faulty && <Notice as="fault">{t.nameNeeded}</Notice>}
          <Button type="submit">{t.keepIt}</Button>
        </form>
      )}
    </section>
  );
}
