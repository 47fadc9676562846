import { useId, useRef, useState } from 'preact/hooks';
import { type DecimalSign, toCsv } from '../../core/exchange/csv.ts';
import { tallyRows } from '../../core/exchange/tallies.ts';
import type { Summary } from '../../core/ledger/summary.ts';
import { prefs, setPrefs } from '../device/prefs.ts';
import { copyText, type Handed, shareFile } from '../device/share.ts';
import { Button } from '../parts/button.tsx';
import { namingOut } from '../parts/naming.ts';
import { deskWords } from '../words/desk-words.ts';

/**
 * Spreadsheets on Windows take a CSV without it for the old one-byte encoding and garble every
 * accented name; programs that read CSV drop it.
 */
const BYTE_ORDER_MARK = '\uFEFF';

/** The week as a table, through the phone's share sheet, as a download, or as text to copy. */
export function HandOver({ practices, name }: { practices: Summary[]; name: string }) {
  const t = deskWords.value.week;
  const [handed, setHanded] = useState<Handed>();
  const fileName = `rally-ledger-${name}.csv`;
  const handOver = () => {
    const csv = BYTE_ORDER_MARK + tableOf(practices);
    void shareFile(new File([csv], fileName, { type: 'text/csv' })).then(setHanded);
  };
  return (
    <section class="part no-print" aria-labelledby="export">
      <h2 id="export">{t.export}</h2>
      <p>{t.exportNote}</p>
      <Naming />
      <Decimals />
      <Button as="main" onClick={handOver}>
        {t.handOver}
      </Button>
      <div class="stack" role="status">
        {handed === 'shared' && <p>{t.shared}</p>}
        {handed === 'saved' && <p class="break">{t.saved(fileName)}</p>}
        {handed === 'text' && <p>{t.text}</p>}
      </div>
      {handed === 'saved' && (
        <Button as="quiet" onClick={() => setHanded('text')}>
          {t.asText}
        </Button>
      )}
      {handed === 'text' && <TextToCopy text={tableOf(practices)} />}
      <Button onClick={() => print()}>{t.print}</Button>
    </section>
  );
}

const tableOf = (practices: Summary[]): string =>
  toCsv(tallyRows(practices, namingOut()), decimalOfTable());

/** Whether the language in use, in the phone's country, writes decimals with a comma. */
const writesCommas = () => deskWords.value.week.decimalSign === ',';

/** The sign that was chosen; until then the one that a spreadsheet of this phone's country takes. */
const decimalOfTable = (): DecimalSign =>
  prefs.value.decimals ?? (writesCommas() ? 'comma' : 'point');

function Naming() {
  const t = deskWords.value.week;
  return (
    <OneOf
      legend={t.called}
      values={[
        [false, t.nicknames],
        [true, t.initials],
      ]}
      value={prefs.value.initials}
      onChange={(initials) => setPrefs({ initials })}
    />
  );
}

/** Asked only where decimals are written with a comma, and where that was chosen before. */
function Decimals() {
  const t = deskWords.value.week;
  if (!writesCommas() && prefs.value.decimals === undefined) return null;
  return (
    <OneOf
      legend={t.decimals}
      values={[
        ['comma', t.decimalComma],
        ['point', t.decimalPoint],
      ]}
      value={decimalOfTable()}
      onChange={(decimals) => setPrefs({ decimals })}
    />
  );
}

function OneOf<Value extends string | boolean>({
  legend,
  values,
  value,
  onChange,
}: {
  legend: string;
  values: readonly (readonly [value: Value, name: string])[];
  value: Value;
  onChange: (value: Value) => void;
}) {
  const group = useId();
  return (
    <fieldset class="one-of">
      <legend>{legend}</legend>
      {values.map(([each, name]) => (
        <label key={name}>
          <input
            type="radio"
            name={group}
            checked={value === each}
            onChange={() => onChange(each)}
          />
          {name}
        </label>
      ))}
    </fieldset>
  );
}

function TextToCopy({ text }: { text: string }) {
  const t = deskWords.value.week;
  const area = useRef<HTMLTextAreaElement>(null);
  const [copied, setCopied] = useState<boolean>();
  const copy = async () => {
    const done = await copyText(text);
    if (!done) area.current?.select();
    setCopied(done);
  };
  return (
    <div class="stack">
      <textarea ref={area} class="csv" aria-label={t.textLabel} readOnly rows={8} value={text} />
      <Button onClick={copy}>{t.copy}</Button>
      <p role="status">{copied === undefined ? '' : copied ? t.copied : t.marked}</p>
    </div>
  );
}
