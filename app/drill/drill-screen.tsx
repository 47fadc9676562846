import { useState } from 'preact/hooks';
import type { Drill } from '../../core/drill/drill.ts';
import { library } from '../ledger.ts';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import { go, replace } from '../route.ts';
import { cardWords } from '../words/card-words.ts';
import { DrillCard } from './drill-card.tsx';
import { DrillForm } from './drill-form.tsx';
import './drill.css';

/** A drill's card, which opens its form; without a drill the form of a new one. */
export function DrillScreen({ drill: id }: { drill: string | undefined }) {
  const drill = id === undefined ? undefined : library.value.drills.get(id);
  if (drill) return <KnownDrill key={drill.id} drill={drill} />;
  // The phone's back gesture after it leads past the form.
  if (id === undefined) return <DrillForm onDone={() => replace('block')} />;
  return (
    <main class="page">
      <Notice>{cardWords.value.notHere}</Notice>
      <Button onClick={() => go('block')}>{cardWords.value.toBlock}</Button>
    </main>
  );
}

function KnownDrill({ drill }: { drill: Drill }) {
  const [changing, setChanging] = useState(false);
  return changing ? (
    <DrillForm drill={drill} onDone={() => setChanging(false)} />
  ) : (
    <DrillCard drill={drill} onChange={() => setChanging(true)} />
  );
}
