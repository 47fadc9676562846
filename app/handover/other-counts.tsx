import type { OpenRound } from '../../core/ledger/practice.ts';
import type { Tally } from '../../core/round/tally.ts';
import { append } from '../ledger.ts';
import { Button } from '../parts/button.tsx';
import { namesOf } from '../parts/names.ts';
import { Notice } from '../parts/notice.tsx';
import { handoverWords } from '../words/handover-words.ts';
import { phoneName } from './phone-name.ts';

const choose = ({ practice, said }: OpenRound, pair: string, of: string) =>
  append({ kind: 'count-chosen', practice, ...said, pair, of });

/** Where several phones counted one pair: each count, and which of them holds. */
export function OtherCounts({ round, tally }: { round: OpenRound; tally: Tally }) {
  const t = handoverWords.value.counts;
  const { pair, also = [], sets, chosen } = tally;
  const counts = [{ phone: round.phones[pair.letter] ?? '', sets }, ...also];
  return (
    <Notice>
      <p>{t.two}</p>
      <ul>
        {counts
          .toSorted((a, b) => (a.phone < b.phone ? -1 : 1))
          .map(({ phone, sets }) => (
            <li key={phone} class="row">
              <span class="grow break">{t.of(phoneName(phone), sets)}</span>
              <Button
                aria-label={`${t.holds}: ${t.of(phoneName(phone), sets)}`}
                aria-pressed={chosen === true && phone === round.phones[pair.letter]}
                onClick={() => choose(round, pair.letter, phone)}
              >
                {t.holds}
              </Button>
            </li>
          ))}
      </ul>
    </Notice>
  );
}

/** Counts of players who were counted in another round at the same time; the coach can have them hold. */
export function Aside({ round }: { round: OpenRound }) {
  const t = handoverWords.value.counts;
  return (
    <section class="part">
      <p>{t.aside}</p>
      <ul>
        {round.aside?.map(({ pair: { letter, players }, sets }) => (
          <li key={letter} class="row">
            <span class="grow break">{t.asideOf(namesOf(players), sets)}</span>
            {sets > 0 && (
              <Button onClick={() => choose(round, letter, round.phones[letter] ?? '')}>
                {t.holds}
              </Button>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
