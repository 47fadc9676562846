import { useState } from 'preact/hooks';
import {
  fociLookedAt,
  qualityBesideVolume,
  roundsBesideQuality,
} from '../../core/figures/quality-beside-volume.ts';
import type { Summary } from '../../core/ledger/summary.ts';
import { Graph } from '../parts/graph.tsx';
import { drillName } from '../words/drill-text.ts';
import { focusQuestion } from '../words/focus-question.ts';
import { qualityWords } from '../words/quality-words.ts';
import { words } from '../words/words.ts';
import { HEIGHT, volumePlot, WIDTH } from './volume-plot.ts';

/** One picture with volume across and quality up, one mark a practice, and the rounds in numbers. */
export function VolumePart({ summaries }: { summaries: readonly Summary[] }) {
  const t = qualityWords.value.volume;
  const foci = fociLookedAt(summaries);
  const [chosen, setChosen] = useState<string>();
  const focus = chosen ?? foci[0];
  if (focus === undefined) return null;
  return (
    <section class="part" aria-labelledby="volume">
      <h2 id="volume">{t.title}</h2>
      <p class="small">{t.means}</p>
      {foci.length > 1 && (
        <label class="stack">
          <b>{t.focus}</b>
          <select value={focus} onChange={(event) => setChosen(event.currentTarget.value)}>
            {foci.map((each) => (
              <option key={each} value={each}>
                {focusQuestion(each)}
              </option>
            ))}
          </select>
        </label>
      )}
      <Picture summaries={summaries} focus={focus} />
      <Rounds summaries={summaries} />
    </section>
  );
}

function Picture({ summaries, focus }: { summaries: readonly Summary[]; focus: string }) {
  const t = qualityWords.value.volume;
  const { number } = words.value;
  const practices = qualityBesideVolume(summaries, focus);
  const plot = volumePlot(practices);
  const newest = plot?.marks.at(-1);
  if (!plot || !newest) return <p>{t.none}</p>;
  const ends = [number(plot.least), number(plot.most)] as const;
  const at = ({ x, y }: { x: number; y: number }) => `M${x} ${y}h0`;
  return (
    <figure class="quality-plot">
      <Graph
        size={[WIDTH, HEIGHT]}
        label={t.picture(practices.length, ...ends)}
        top={t.percent(1)}
        bottom={t.percent(0)}
        ends={
          <>
            <span>{ends[0]}</span>
            <span>{t.touches(plot.most)}</span>
          </>
        }
      >
        <path class="graph-dots" d={plot.marks.slice(0, -1).map(at).join('')} />
        <path class="graph-dots quality-frame" d={at(newest)} />
        <path class="graph-dots quality-newest" d={at(newest)} />
      </Graph>
    </figure>
  );
}

/** Every round in which somebody looked, the newest practice first: its sets beside its looks. */
function Rounds({ summaries }: { summaries: readonly Summary[] }) {
  const t = qualityWords.value;
  const practices = summaries
    .map((summary) => ({ summary, rounds: roundsBesideQuality(summary) }))
    .filter(({ rounds }) => rounds.length > 0)
    .toReversed();
  return (
    <details class="quality-more">
      <summary>{t.volume.rounds}</summary>
      {practices.map(({ summary, rounds }) => (
        <div key={summary.practice}>
          <h3>{t.volume.date(summary.date)}</h3>
          <ul class="quality-rounds">
            {rounds.map(({ ordinal, terms, sets, focus, held, looks }) => (
              <li key={`${ordinal} ${focus}`}>
                <span class="break">{t.volume.round(ordinal + 1, drillName(terms))}</span>
                <span class="small faint break">{focusQuestion(focus)}</span>
                <span class="number">
                  {t.volume.sets(sets)}, {t.looks.of(held, looks)}
                </span>
              </li>
            ))}
          </ul>
        </div>
      ))}
    </details>
  );
}
