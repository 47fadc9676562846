import { useState } from 'preact/hooks';
import { cardText } from '../../core/exchange/card.ts';
import { copyText, type Handed, shareFile } from '../device/share.ts';
import { Button } from '../parts/button.tsx';
import { HandedOver } from '../parts/handed-over.tsx';
import { Notice } from '../parts/notice.tsx';
import { Reading } from '../parts/reading.tsx';
import { history } from '../practices.ts';
import { handoverWords } from '../words/handover-words.ts';
import { words } from '../words/words.ts';
import { cardOf } from './card-of.ts';
import { cardPicture } from './card-picture.ts';
import { Code } from './code.tsx';
import { toLink } from './link.ts';
import { pack } from './packing.ts';
import { Page } from './page.tsx';
import { PlayerCard } from './player-card.tsx';

/** A player's card to take home: as a code, a link, a picture, or on paper. */
export function GiveCardScreen({ player }: { player: string }) {
  const t = handoverWords.value.card;
  const [copied, setCopied] = useState<boolean>();
  const [handed, setHanded] = useState<Handed | 'failed'>();
  const card = cardOf(player);
  if (!card) {
    return (
      <Page title={t.title}>
        {history.value === undefined ? <Reading /> : <p>{words.value.player.nothing}</p>}
      </Page>
    );
  }
  const address = new URL(location.href);
  address.hash = `#/handover/card/${toLink(pack(cardText(card)))}`;
  const handPicture = async () => {
    const picture = await cardPicture(card);
    setHanded(picture ? await shareFile(picture) : 'failed');
  };
  return (
    <Page title={t.title}>
      <p class="no-print">{t.means}</p>
      <PlayerCard card={card} />
      <Code frames={[address.href]} label={t.code} level="L" />
      <p class="no-print">{t.codeMeans}</p>
      <div class="row no-print">
        <Button onClick={() => void copyText(address.href).then(setCopied)}>{t.copy}</Button>
        <Button onClick={() => void handPicture()}>{t.picture}</Button>
        <Button onClick={() => print()}>{t.print}</Button>
      </div>
      <p role="status">{copied && t.copied}</p>
      {copied === false && (
        <textarea readOnly aria-label={t.link} rows={5} class="no-print">
          {address.href}
        </textarea>
      )}
      {handed === 'failed' ? (
        <Notice as="fault">{t.noPicture}</Notice>
      ) : (
        <HandedOver handed={handed} name="rally-ledger-card.png" />
      )}
    </Page>
  );
}
