import { type Practice, roundsThatCount } from '../../core/ledger/practice.ts';
import { currentRound, roundsLeft } from '../actions.ts';
import { Bar } from '../parts/bar.tsx';
import { Button } from '../parts/button.tsx';
import { lazyPart } from '../parts/lazy.tsx';
import { Messages } from '../parts/messages.tsx';
import { openPractice } from '../practices.ts';
import { go } from '../route.ts';
import { ClosePractice } from '../today/close-practice.tsx';
import { words } from '../words/words.ts';
import { BeforeRound } from './before-round.tsx';
import { RunningRound } from './running-round.tsx';

const BlockSummary = lazyPart(() =>
  import('./block-summary.tsx').then((file) => file.BlockSummary),
);

/** A round from its drill's card to the horn; where none is set, what to do next. */
export function CourtScreen() {
  const practice = openPractice.value;
  const round = currentRound(practice);
  // A round that was set waits in vain where its drill, the last one, was taken out of the block.
  if (!round || (!round.clock && isDone(practice))) return <NoRound />;
  return round.clock ? (
    <RunningRound key={round.id} round={round} clock={round.clock} />
  ) : (
    <BeforeRound round={round} />
  );
}

/** Whether something was played, and nothing of the block is left. */
const isDone = (practice: Practice | undefined): boolean =>
  practice !== undefined && roundsThatCount(practice).length > 0 && roundsLeft(practice) === 0;

function NoRound() {
  const t = words.value.court;
  const done = isDone(openPractice.value);
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
          {done && <ClosePractice />}
          <Button onClick={() => go()}>{t.toToday}</Button>
        </section>
        {done && <BlockSummary />}
      </main>
      <Bar />
    </>
  );
}
