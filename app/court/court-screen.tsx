import { plannedRounds } from '../../core/round/block.ts';
import { currentPlan, currentRound } from '../actions.ts';
import { openPractice } from '../ledger.ts';
import { Bar } from '../parts/bar.tsx';
import { Button } from '../parts/button.tsx';
import { lazyPart } from '../parts/lazy.tsx';
import { Messages } from '../parts/messages.tsx';
import { go } from '../route.ts';
import { words } from '../words/words.ts';
import { BeforeRound } from './before-round.tsx';
import { RunningRound } from './running-round.tsx';

const BlockSummary = lazyPart(() =>
  import('./block-summary.tsx').then((file) => file.BlockSummary),
);

/** A round from its drill's card to the horn; where none is set, what to do next. */
export function CourtScreen() {
  const round = currentRound(openPractice.value);
  if (!round) return <NoRound />;
  return round.clock ? (
    <RunningRound key={round.id} round={round} clock={round.clock} />
  ) : (
    <BeforeRound round={round} />
  );
}

function NoRound() {
  const t = words.value.court;
  const played = openPractice.value?.rounds.length ?? 0;
  const done = played > 0 && played >= plannedRounds(currentPlan());
  return (
    <>
      <main class="page">
        <h1>{done ? t.blockDone : t.title}</h1>
        <Messages />
        <section class="part">
          <p>{done ? t.blockDoneNext : t.nothing}</p>
          {done && (
            <Button as="main" onClick={() => go('players')}>
              {t.players}
            </Button>
          )}
          <Button onClick={() => go()}>{t.toToday}</Button>
        </section>
        {done && <BlockSummary />}
      </main>
      <Bar />
    </>
  );
}
