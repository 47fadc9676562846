import { fociHeld } from '../../core/figures/focus-held.ts';
import type { Summary } from '../../core/ledger/summary.ts';
import { estimated } from '../estimates.ts';
import { squad } from '../ledger.ts';
import { Button } from '../parts/button.tsx';
import { FiguresPage } from '../parts/figures-page.tsx';
import { playerName } from '../parts/names.ts';
import { go } from '../route.ts';
import { qualityWords } from '../words/quality-words.ts';
import { words } from '../words/words.ts';
import { CarePart } from './care-part.tsx';
import { FociPart } from './foci-part.tsx';
import { LoadPart } from './load-part.tsx';
import { OwnFociHeld } from './own-foci-held.tsx';
import { VolumePart } from './volume-part.tsx';
import { WatchersPart } from './watchers-part.tsx';
import './quality.css';

/** For the coach: quality beside quantity, of the squad or of one player. */
export function QualityScreen({ player }: { player?: string | undefined }) {
  const t = qualityWords.value;
  const isOne = player !== undefined && squad.value.has(player);
  const summaries = estimated.value;
  return (
    <FiguresPage
      title={isOne ? playerName(player) : t.title}
      beside={
        <Button onClick={() => (isOne ? go('quality') : go('review'))}>{words.value.back}</Button>
      }
    >
      {() =>
        isOne ? (
          <>
            <OwnFociHeld summaries={summaries} player={player} coach />
            <CarePart summaries={summaries} player={player} />
            <LoadPart summaries={summaries} player={player} />
          </>
        ) : (
          <Squad summaries={summaries} />
        )
      }
    </FiguresPage>
  );
}

function Squad({ summaries }: { summaries: readonly Summary[] }) {
  const t = qualityWords.value;
  const foci = fociHeld(summaries);
  return (
    <>
      {foci.length === 0 ? (
        <p>{t.nothing}</p>
      ) : (
        <>
          <p class="small">{t.weeks}</p>
          <FociPart foci={foci} />
          <VolumePart summaries={summaries} />
          <WatchersPart summaries={summaries} />
        </>
      )}
      <section class="part">
        <Button onClick={() => go('effort')}>{t.effort.open}</Button>
        <h2>{words.value.bar.players}</h2>
        <ul class="row">
          {[...squad.value.values()].map(({ id, name }) => (
            <li key={id}>
              <Button onClick={() => go('quality', id)}>{name}</Button>
            </li>
          ))}
        </ul>
      </section>
    </>
  );
}
