import { nanoid } from 'nanoid';
import { useEffect, useRef, useState } from 'preact/hooks';
import { type Drill, families, roleNumbers } from '../../core/drill/drill.ts';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import { Stepper } from '../parts/stepper.tsx';
import { cardWords } from '../words/card-words.ts';
import { wholeTextOf } from '../words/drill-instructions.ts';
import { words } from '../words/words.ts';
import { namesBeside, writeDrill } from './actions.ts';
import { Counting } from './counting.tsx';
import { type Draft, draftOf, emptyDraft } from './draft.ts';
import { Choice, FormPart, sayFault, TextField } from './fields.tsx';
import { isFaulty, nameOf, Places } from './places.tsx';
import { type Fault, readDraft } from './read-draft.ts';
import { draftLeft, dropDraft, keepDraft } from './stored-draft.ts';
import { thingsOf } from './things.ts';

/** Everything that a drill is, to be written or changed; without a drill a new one. */
export function DrillForm({ drill, onDone }: { drill?: Drill; onDone: () => void }) {
  const t = cardWords.value;
  const form = useRef<HTMLFormElement>(null);
  const [start] = useState(() => (drill ? draftOf(drill, wholeTextOf(drill)) : emptyDraft()));
  const [draft, setDraft] = useState(start);
  const [resumed, setResumed] = useState(false);
  const touched = useRef(false);
  const [chosen, setChosen] = useState('start-0');
  const [attempts, setAttempts] = useState(0);

  useEffect(() => {
    if (attempts === 0) return;
    form.current
      ?.querySelector<HTMLElement>('[aria-invalid="true"], [data-invalid="true"]')
      ?.focus();
  }, [attempts]);

  // A phone that is slow to answer keeps nobody from writing; who has begun by then goes on with that.
  useEffect(() => {
    void draftLeft(drill?.id).then((left) => {
      if (!left || touched.current) return;
      setDraft(left);
      setResumed(true);
    });
  }, [drill?.id]);

  const read = readDraft(draft, drill?.id ?? '', namesBeside(drill?.id));
  const faults = attempts > 0 && 'faults' in read ? read.faults : [];
  const faultOf = (field: string) => faults.find((fault) => fault.field === field);

  const change = (next: Draft) => {
    touched.current = true;
    keepDraft(drill?.id, next);
    setDraft(next);
  };
  const leave = () => {
    touched.current = true;
    dropDraft(drill?.id);
    onDone();
  };
  const save = (event: Event) => {
    event.preventDefault();
    const final = readDraft(draft, drill?.id ?? nanoid(10), namesBeside(drill?.id));
    if ('drill' in final) {
      writeDrill(final.drill);
      leave();
      return;
    }
    const faulty = thingsOf(draft).find((thing) => isFaulty(thing, final.faults));
    if (faulty) setChosen(faulty.key);
    setAttempts(attempts + 1);
  };

  return (
    <main class="page">
      <header class="drill-head">
        <h1>{drill ? t.titleChange : t.titleNew}</h1>
        <Button onClick={leave}>{words.value.cancel}</Button>
      </header>
      {drill && <p>{t.changeMeans}</p>}
      {resumed && (
        <Notice>
          {t.unfinished}{' '}
          <Button
            onClick={() => {
              dropDraft(drill?.id);
              setDraft(start);
              setResumed(false);
            }}
          >
            {t.startAgain}
          </Button>
        </Notice>
      )}
      <form ref={form} class="drill-form" onSubmit={save} noValidate>
        <FormPart title={t.text}>
          <TextField
            field="name"
            label={t.name}
            value={draft.name}
            fault={faultOf('name')}
            onInput={(name) => change({ ...draft, name })}
          />
          <Choice
            label={t.family}
            value={draft.family}
            values={families.map((family) => [family, words.value.families[family]] as const)}
            onChange={(family) => change({ ...draft, family })}
          />
          <TextField
            field="intention"
            label={t.intention}
            rows={3}
            value={draft.intention}
            fault={faultOf('intention')}
            onInput={(intention) => change({ ...draft, intention })}
          />
          <TextField
            field="cue"
            label={t.cue}
            rows={2}
            value={draft.cue}
            fault={faultOf('cue')}
            onInput={(cue) => change({ ...draft, cue })}
          />
          <div class="drill-pair">
            {roleNumbers.map((role) => (
              <TextField
                key={role}
                field={`role-${role}`}
                label={t.roleName(role)}
                value={draft.roleNames[role]}
                fault={faultOf(`role-${role}`)}
                onInput={(name) => {
                  const [one, two] = draft.roleNames;
                  change({ ...draft, roleNames: role === 0 ? [name, two] : [one, name] });
                }}
              />
            ))}
          </div>
          <p class="small">{t.optional}</p>
          {roleNumbers.map((role) => (
            <TextField
              key={role}
              field={`task-${role}`}
              label={t.tasksOf(role)}
              rows={2}
              value={draft.tasks[role]}
              fault={faultOf(`task-${role}`)}
              onInput={(task) => {
                const [one, two] = draft.tasks;
                change({ ...draft, tasks: role === 0 ? [task, two] : [one, task] });
              }}
            />
          ))}
          <TextField
            field="feed"
            label={t.feedMeans}
            rows={2}
            value={draft.feed}
            fault={faultOf('feed')}
            onInput={(feed) => change({ ...draft, feed })}
          />
          <TextField
            field="counts"
            label={t.countsMeans}
            rows={2}
            value={draft.counts}
            fault={faultOf('counts')}
            onInput={(counts) => change({ ...draft, counts })}
          />
        </FormPart>
        <FormPart title={t.counting}>
          <Counting draft={draft} onChange={change} fault={faultOf('shots')} />
        </FormPart>
        <FormPart title={t.onCourt}>
          <div class="drill-line">
            <span>{t.perCourt}</span>
            <Stepper
              label={t.perCourt}
              value={draft.perCourt}
              least={1}
              most={4}
              onChange={(perCourt) => change({ ...draft, perCourt })}
            />
          </div>
          <Places
            draft={draft}
            onChange={change}
            chosen={chosen}
            onChoose={setChosen}
            faults={faults}
          />
        </FormPart>
        <div class="drill-save">
          {faults.length > 0 && (
            <Notice as="fault">
              {t.toMend(words.value.list(faults.map((fault) => whatIsFaulty(draft, fault))))}
            </Notice>
          )}
          <Button as="main" type="submit">
            {t.save}
          </Button>
        </div>
      </form>
    </main>
  );
}

/** The name of what is to be put right, as the form calls it; the sentence itself for the whole. */
function whatIsFaulty(draft: Draft, fault: Fault): string {
  const t = cardWords.value;
  const texts: Record<string, string> = {
    name: t.name,
    intention: t.intention,
    cue: t.cue,
    'role-0': t.roleName(0),
    'role-1': t.roleName(1),
    'task-0': t.tasksOf(0),
    'task-1': t.tasksOf(1),
    feed: t.feedMeans,
    counts: t.countsMeans,
    shots: t.shots,
    'target-width': t.target,
    'target-length': t.target,
  };
  const thing = thingsOf(draft).find(({ key }) => key === fault.field);
  return texts[fault.field] ?? (thing ? nameOf(thing) : sayFault(fault));
}
