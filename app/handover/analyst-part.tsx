import { useState } from 'preact/hooks';
import { isoWeek, weekName } from '../../core/calendar.ts';
import { initials } from '../../core/exchange/initials.ts';
import type { Summary } from '../../core/ledger/summary.ts';
import { today } from '../device/clock.ts';
import { prefs } from '../device/prefs.ts';
import { type Handed, shareFile } from '../device/share.ts';
import { estimated, waiting } from '../estimates.ts';
import { squad } from '../ledger.ts';
import { Button } from '../parts/button.tsx';
import { HandedOver } from '../parts/handed-over.tsx';
import { playerName } from '../parts/names.ts';
import { Choice } from '../settings/choice.tsx';
import { drillName } from '../words/drill-text.ts';
import { figureWords } from '../words/figure-words.ts';
import { focusQuestion } from '../words/focus-question.ts';
import { handoverWords } from '../words/handover-words.ts';
import { analystFiles, analystZip } from './analyst-zip.ts';
import '../settings/settings.css';

const spans = ['week', 'month', 'season'] as const;
type Span = (typeof spans)[number];

/** The name of the span that a date lies in: of one name are those that go out together. */
const spanOf = (date: string, span: Span): string =>
  span === 'week' ? weekName(isoWeek(date)) : span === 'month' ? date.slice(0, 7) : 'season';

/** Tables with their description, for the tools of a club or a federation. */
export function AnalystPart() {
  const t = handoverWords.value.analyst;
  const [span, setSpan] = useState<Span>('week');
  const [handed, setHanded] = useState<Handed>();
  const now = spanOf(today(), span);
  const practices = estimated.value.filter(({ date }) => spanOf(date, span) === now);
  const name = `rally-ledger-${now.toLowerCase()}`;
  return (
    <section class="part" aria-labelledby="analyst">
      <h2 id="analyst">{t.title}</h2>
      <p>{t.means}</p>
      <Choice legend={t.span} values={spans} value={span} names={t.spans} onChange={setSpan} />
      {waiting.value > 0 && <p class="small">{figureWords.value.beingWorkedOut(waiting.value)}</p>}
      <Button
        disabled={practices.length === 0}
        onClick={() => void shareFile(zipOf(practices, name)).then(setHanded)}
      >
        {t.handOver}
      </Button>
      {practices.length === 0 && <p class="faint">{t.none}</p>}
      <HandedOver handed={handed} name={`${name}.zip`} />
    </section>
  );
}

function zipOf(practices: readonly Summary[], name: string): File {
  const short = initials(new Map([...squad.value].map(([id, player]) => [id, player.name])));
  const files = analystFiles(practices, name, {
    player: (id) => (prefs.value.initials && short.get(id)) || playerName(id),
    drill: drillName,
    focus: focusQuestion,
  });
  return analystZip(files, name);
}
