import { useState } from 'preact/hooks';
import { stillOpen } from '../../core/ledger/practice.ts';
import { closePractice } from '../actions.ts';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import { openPractice } from '../practices.ts';
import { go, href } from '../route.ts';
import { drillName } from '../words/drill-text.ts';
import { words } from '../words/words.ts';

/** Closes the practice; where something is open in it, that is said first. */
export function ClosePractice() {
  const t = words.value.today;
  const [asked, setAsked] = useState(false);
  const open = openPractice.value;
  if (!open) return null;
  const close = () => {
    closePractice();
    go();
  };
  const { rounds, marks } = stillOpen(open);
  if (!asked || (rounds.length === 0 && marks === 0)) {
    const isOpen = rounds.length > 0 || marks > 0;
    return <Button onClick={() => (isOpen ? setAsked(true) : close())}>{t.close}</Button>;
  }
  return (
    <Notice>
      <p>{t.stillOpen}</p>
      <ul>
        {rounds.map((round) => (
          <li key={round.id}>
            <a href={href('settle', round.id)}>
              {t.openRound(
                words.value.named(t.roundNumber(round.ordinal + 1), drillName(round.terms)),
              )}
            </a>
          </li>
        ))}
        {marks > 0 && <li>{t.openMarks(marks)}</li>}
      </ul>
      <Button onClick={close}>{t.closeAnyway}</Button>
    </Notice>
  );
}
