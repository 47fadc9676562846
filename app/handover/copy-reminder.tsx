import { copyDue } from '../../core/exchange/copy-due.ts';
import { today } from '../device/clock.ts';
import { lastCopy } from '../device/last-copy.ts';
import { prefs } from '../device/prefs.ts';
import { Notice } from '../parts/notice.tsx';
import { summaries } from '../practices.ts';
import { href } from '../route.ts';
import { handoverWords } from '../words/handover-words.ts';

/** Reminds of a copy once more than a week of practice is in none. */
export function CopyReminder() {
  const t = handoverWords.value.copy;
  const dates = summaries.value.map(({ date }) => date);
  if (prefs.value.demo || !copyDue(dates, lastCopy.value, today())) return null;
  return (
    <Notice>
      {t.due} <a href={href('settings')}>{t.make}</a>
    </Notice>
  );
}
