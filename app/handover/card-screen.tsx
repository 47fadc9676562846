import { readCard } from '../../core/exchange/card.ts';
import { Notice } from '../parts/notice.tsx';
import { href } from '../route.ts';
import { handoverWords } from '../words/handover-words.ts';
import { fromLink } from './link.ts';
import { unpack } from './packing.ts';
import { PlayerCard } from './player-card.tsx';

/** A card that came by a link or a code: the player's own page, which nothing on it can change. */
export function CardScreen({ link }: { link: string }) {
  const t = handoverWords.value.card;
  const bytes = fromLink(link);
  const unpacked = bytes && unpack(bytes);
  const card = typeof unpacked === 'object' ? readCard(unpacked.text) : undefined;
  return (
    <main class="page">
      <header>
        <h1>{t.title}</h1>
      </header>
      {typeof card === 'object' ? (
        <>
          <PlayerCard card={card} />
          <p>{t.onlyHere}</p>
        </>
      ) : (
        <Notice as="fault">{card === 'version' ? t.newer : t.damaged}</Notice>
      )}
      <a class="button no-print" href={href()}>
        {t.toApp}
      </a>
    </main>
  );
}
