import { useEffect, useState } from 'preact/hooks';
import { type Arriving, arriving } from '../../core/exchange/arriving.ts';
import type { Brought } from '../../core/exchange/backup-reader.ts';
import type { AnyEntry } from '../../core/ledger/entry.ts';
import { news } from '../device/take.ts';
import { squad, store } from '../ledger.ts';
import { Button } from '../parts/button.tsx';
import { playerName } from '../parts/names.ts';
import { Notice } from '../parts/notice.tsx';
import { dateOfPractice, readHistory, summaries, takeInFile } from '../practices.ts';
import { route } from '../route.ts';
import { handoverWords } from '../words/handover-words.ts';
import { words } from '../words/words.ts';
import { phoneName } from './phone-name.ts';
import { Twins } from './twins-part.tsx';

/** What became of a file or a code that was looked at. */
type Kept = { taken: number } | 'left' | 'failed';

/** What comes, before it is kept: nothing is written until the coach says so. */
export function WhatComes({ brought, onKept }: { brought: Brought; onKept?: () => void }) {
  const t = handoverWords.value.arriving;
  const [seen, setSeen] = useState<{ what: Arriving; fresh: readonly AnyEntry[] } | 'failed'>();
  const [erased, setErased] = useState<ReadonlySet<string>>(new Set());
  const [kept, setKept] = useState<Kept>();
  useEffect(() => {
    void lookAt(brought).then(setSeen, () => setSeen('failed'));
  }, [brought]);

  if (seen === undefined) return <p role="status">{t.looking}</p>;
  if (seen === 'failed') return <Notice as="fault">{t.failed}</Notice>;
  const { what } = seen;
  if (kept === 'left') return <p role="status">{t.left}</p>;
  if (typeof kept === 'object') {
    return (
      <>
        <p role="status">{kept.taken === 0 ? t.nothing : t.kept(kept.taken)}</p>
        {/* There they are asked about further down. */}
        {route.value[0] !== 'handover' && <Twins />}
      </>
    );
  }
  if (what.entries === 0) return <p role="status">{t.nothing}</p>;
  const take = () => {
    // What another phone erased stays here until the coach says that it goes.
    const stays = (entry: AnyEntry) => {
      const of = erasedBy(entry);
      const asked = [...what.erases.players, ...what.erases.practices];
      return of === undefined || !asked.includes(of) || erased.has(of);
    };
    takeInFile(brought.standing.filter(stays), brought.practices).then(
      (taken) => {
        setKept({ taken });
        onKept?.();
      },
      () => setKept('failed'),
    );
  };
  return (
    <section class="part" aria-labelledby="arriving">
      <h2 id="arriving">{t.title}</h2>
      <p>
        <b>{t.entries(what.entries)}</b>
        {what.practices > 0 && `: ${t.practices(what.practices, what.rounds, what.marks)}`}
      </p>
      <h3>{t.from}</h3>
      <ul class="stack">
        {what.phones.map(({ phone, rounds, marks, entries }) => (
          <li key={phone}>{t.fromPhone(phoneName(phone), rounds, marks, entries)}</li>
        ))}
      </ul>
      {what.players.length > 0 && (
        <p class="break">{t.players(words.value.list(namesIn(seen.fresh, what.players)))}</p>
      )}
      <Erasures what={what} erased={erased} onChange={setErased} />
      <p>{t.stays}</p>
      {kept === 'failed' && <Notice as="fault">{t.notKept}</Notice>}
      <Button as="main" onClick={take}>
        {t.take}
      </Button>
      <Button onClick={() => setKept('left')}>{t.leave}</Button>
    </section>
  );
}

async function lookAt({ standing, practices }: Brought) {
  await readHistory();
  const fresh = await news(store, standing, practices);
  const here = new Set(summaries.value.map(({ practice }) => practice));
  return { fresh, what: arriving(fresh, new Set(squad.value.keys()), here) };
}

const erasedBy = ({ kind, player, erased }: AnyEntry): string | undefined =>
  kind === 'player-erased'
    ? String(player)
    : kind === 'practice-erased'
      ? String(erased)
      : undefined;

const namesIn = (fresh: readonly AnyEntry[], players: readonly string[]): string[] =>
  fresh.flatMap(({ kind, player, name }) =>
    kind === 'player-added' && players.includes(String(player)) ? [String(name)] : [],
  );

/** What another phone erased and is here still: a box each, empty until the coach ticks it. */
function Erasures({
  what: { erases },
  erased,
  onChange,
}: {
  what: Arriving;
  erased: ReadonlySet<string>;
  onChange: (erased: ReadonlySet<string>) => void;
}) {
  const t = handoverWords.value;
  const asked = [
    ...erases.players.map((id) => [id, playerName(id)] as const),
    ...erases.practices.map(
      (id) => [id, t.practiceOf(words.value.date(dateOfPractice(id) ?? ''))] as const,
    ),
  ];
  if (asked.length === 0) return null;
  return (
    <Notice>
      <p>{t.arriving.erases}</p>
      {asked.map(([id, name]) => (
        <label key={id} class="row">
          <input
            type="checkbox"
            checked={erased.has(id)}
            onChange={() => {
              const more = new Set(erased);
              if (!more.delete(id)) more.add(id);
              onChange(more);
            }}
          />
          <span class="grow break">{t.arriving.erase(name)}</span>
        </label>
      ))}
    </Notice>
  );
}
