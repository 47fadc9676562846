import type { ComponentChildren } from 'preact';
import { Button } from '../parts/button.tsx';
import { cardWords } from '../words/card-words.ts';
import { words } from '../words/words.ts';
import type { Fault } from './read-draft.ts';
import { type Metres, stepped, typed } from './spot.ts';

/** What is wrong with a field, as a sentence that says what to do. */
export function sayFault({ reason, most = 0 }: Fault): string {
  const t = cardWords.value.faults;
  return reason === 'long' ? t.long(most) : t[reason];
}

const idOf = (field: string) => `drill-${field}`;
const faultIdOf = (field: string) => `${idOf(field)}-fault`;

/** What a field and the sentence on its fault, its own or that of `saidAt`, say of each other. */
const said = (field: string, fault: Fault | undefined, saidAt = field) => ({
  id: idOf(field),
  'aria-invalid': fault !== undefined,
  'aria-describedby': fault && faultIdOf(saidAt),
});

/** The sentence beside a field that is wrong. */
export function FaultOf({ field, fault }: { field: string; fault: Fault | undefined }) {
  if (!fault) return null;
  return (
    <p id={faultIdOf(field)} class="drill-fault">
      {sayFault(fault)}
    </p>
  );
}

/** Words of a drill; nothing is cut off while it is typed. */
export function TextField({
  field,
  label,
  value,
  fault,
  rows,
  onInput,
}: {
  field: string;
  label: string;
  value: string;
  fault: Fault | undefined;
  /** Lines of a longer text; left out for one line. */
  rows?: number;
  onInput: (value: string) => void;
}) {
  return (
    <div class="drill-field">
      <label for={idOf(field)}>{label}</label>
      {rows === undefined ? (
        <input
          type="text"
          autocomplete="off"
          {...said(field, fault)}
          value={value}
          onInput={(event) => onInput(event.currentTarget.value)}
        />
      ) : (
        <textarea
          rows={rows}
          {...said(field, fault)}
          value={value}
          onInput={(event) => onInput(event.currentTarget.value)}
        />
      )}
      <FaultOf field={field} fault={fault} />
    </div>
  );
}

/** One of a few, each with its name. */
export function Choice<Value extends string>({
  label,
  value,
  values,
  unseen,
  onChange,
}: {
  label: string;
  value: Value;
  values: readonly (readonly [value: Value, name: string])[];
  /** Whether the label is for a screen reader alone. */
  unseen?: boolean;
  onChange: (value: Value) => void;
}) {
  return (
    <label>
      <span class={unseen ? 'unseen' : undefined}>{label}</span>
      <select value={value} onChange={(event) => onChange(event.currentTarget.value as Value)}>
        {values.map(([each, name]) => (
          <option key={each} value={each}>
            {name}
          </option>
        ))}
      </select>
    </label>
  );
}

/** Metres, typed or put by tenths. */
export function MetresField({
  field,
  label,
  metres,
  fault,
  saidAt,
  onChange,
}: {
  field: string;
  label: string;
  metres: Metres;
  fault: Fault | undefined;
  /** The field beside which the sentence stands, where one is true of several. */
  saidAt?: string | undefined;
  onChange: (metres: Metres) => void;
}) {
  const t = cardWords.value;
  return (
    <div class="drill-field">
      <label for={idOf(field)}>{label}</label>
      <div class="drill-metres">
        <Button aria-label={t.less(label)} onClick={() => onChange(stepped(metres, -1))}>
          −
        </Button>
        <input
          type="text"
          inputmode="decimal"
          autocomplete="off"
          class="number"
          {...said(field, fault, saidAt)}
          value={metres.text ?? words.value.hundredths(metres.value)}
          onInput={(event) => onChange(typed(metres, event.currentTarget.value))}
        />
        <Button aria-label={t.more(label)} onClick={() => onChange(stepped(metres, 1))}>
          +
        </Button>
      </div>
      {saidAt === undefined && <FaultOf field={field} fault={fault} />}
    </div>
  );
}

/** A part of the form under its painted line. */
export function FormPart({ title, children }: { title: string; children: ComponentChildren }) {
  return (
    <section class="part">
      <h2>{title}</h2>
      {children}
    </section>
  );
}
