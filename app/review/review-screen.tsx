import { estimated, waiting } from '../estimates.ts';
import { squad } from '../ledger.ts';
import { Button } from '../parts/button.tsx';
import { FiguresPage } from '../parts/figures-page.tsx';
import { playerName } from '../parts/names.ts';
import { Notice } from '../parts/notice.tsx';
import { QualityLink } from '../quality/quality-link.tsx';
import { go } from '../route.ts';
import { figureWords } from '../words/figure-words.ts';
import { PlayerReview } from './player-review.tsx';
import { SquadReview } from './squad-review.tsx';
import './review.css';

/** For the coach: what the counts of the squad, or of one player, say, and how sure they are. */
export function ReviewScreen({ player }: { player?: string | undefined }) {
  const t = figureWords.value.review;
  const known = player === undefined || squad.value.has(player);
  const played = estimated.value.filter(({ rounds }) => rounds.length > 0);
  return (
    <FiguresPage
      title={known && player !== undefined ? playerName(player) : t.title}
      beside={player !== undefined && <Button onClick={() => go('numbers')}>{t.toSquad}</Button>}
      above={
        <>
          <p class="small faint">{t.squadNote}</p>
          <QualityLink player={player} />
          {waiting.value > 0 && <Notice>{figureWords.value.beingWorkedOut(waiting.value)}</Notice>}
        </>
      }
    >
      {() =>
        !known ? (
          <p>{t.notHere}</p>
        ) : played.length === 0 ? (
          <p>{t.nothing}</p>
        ) : player === undefined ? (
          <SquadReview summaries={played} />
        ) : (
          <PlayerReview summaries={played} player={player} />
        )
      }
    </FiguresPage>
  );
}
