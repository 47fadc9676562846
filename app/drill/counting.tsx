import { countingRules, LARGEST_SIZE, roleNumbers, strokes } from '../../core/drill/drill.ts';
import { Button } from '../parts/button.tsx';
import { Stepper } from '../parts/stepper.tsx';
import { cardWords } from '../words/card-words.ts';
import { words } from '../words/words.ts';
import {
  type Draft,
  MOST_SHOTS,
  sizeOf,
  strokeOf,
  withOneMore,
  withoutShot,
  withShot,
  withStroke,
} from './draft.ts';
import { Choice, FaultOf } from './fields.tsx';
import type { Fault } from './read-draft.ts';

interface Props {
  draft: Draft;
  onChange: (draft: Draft) => void;
}

/** The counting rule, and what a set is made of under it. */
export function Counting({
  draft,
  onChange,
  fault,
}: Props & {
  /** What is wrong with the shots of the sequence. */
  fault: Fault | undefined;
}) {
  const t = cardWords.value;
  return (
    <>
      <fieldset class="drill-rules">
        <legend>{t.rule}</legend>
        {countingRules.map((rule) => (
          <label key={rule}>
            <input
              type="radio"
              name="drill-rule"
              checked={draft.rule === rule}
              onChange={() => onChange({ ...draft, rule })}
            />
            <span>
              <b class="drill-rule">{words.value.rules[rule]}</b>
              <span class="small">{t.ruleMeans[rule]}</span>
            </span>
          </label>
        ))}
      </fieldset>
      {draft.rule === 'sequence' && <Sequence draft={draft} onChange={onChange} fault={fault} />}
      {(draft.rule === 'in-a-row' || draft.rule === 'in-total') && (
        <>
          <div class="drill-line">
            <span>{t.size}</span>
            <Stepper
              label={t.size}
              value={draft.size}
              least={1}
              most={LARGEST_SIZE}
              onChange={(size) => onChange({ ...draft, size })}
            />
          </div>
          <div class="drill-pair">
            {roleNumbers.map((role) => (
              <Choice
                key={role}
                label={t.strokeOf(role)}
                value={strokeOf(draft, role)}
                values={strokeNames()}
                onChange={(stroke) => onChange(withStroke(draft, role, stroke))}
              />
            ))}
          </div>
        </>
      )}
      {draft.rule === 'on-target' && (
        <Choice
          label={t.strokeOfBoth}
          value={strokeOf(draft, 0)}
          values={strokeNames()}
          onChange={(stroke) => onChange(withStroke(draft, 0, stroke))}
        />
      )}
    </>
  );
}

const strokeNames = () =>
  strokes.map((stroke) => [stroke, cardWords.value.strokeNames[stroke]] as const);

function Sequence({ draft, onChange, fault }: Props & { fault: Fault | undefined }) {
  const t = cardWords.value;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would draw a box and a legend
    <div role="group" aria-labelledby="drill-shots-title" class="stack">
      <h3 id="drill-shots-title">{t.shots}</h3>
      <ol class="drill-shots">
        {draft.sequence.map((shot, index) => (
          <li key={index}>
            <b class="number">{index + 1}</b>
            <div class="drill-shot">
              <Choice
                label={t.whoOf(index)}
                unseen
                value={`${shot.role}`}
                values={roleNumbers.map((role) => [`${role}`, t.role(role, draft.roleNames[role])])}
                onChange={(role) =>
                  onChange(withShot(draft, index, { ...shot, role: role === '0' ? 0 : 1 }))
                }
              />
              <Choice
                label={t.strokeOfShot(index)}
                unseen
                value={shot.stroke}
                values={strokeNames()}
                onChange={(stroke) => onChange(withShot(draft, index, { ...shot, stroke }))}
              />
            </div>
            <Button
              aria-label={t.removeShot(index)}
              onClick={() => onChange(withoutShot(draft, index))}
            >
              ×
            </Button>
          </li>
        ))}
      </ol>
      <p class="small" role="status">
        {draft.sequence.length > 0 && t.sizeOfSequence(sizeOf(draft))}
      </p>
      <FaultOf field="shots" fault={fault} />
      <Button
        disabled={draft.sequence.length >= MOST_SHOTS}
        data-invalid={fault !== undefined}
        aria-describedby={fault && 'drill-shots-fault'}
        onClick={() => onChange(withOneMore(draft))}
      >
        {t.addShot}
      </Button>
    </div>
  );
}
