import { useEffect, useState } from 'preact/hooks';
import { receiveFile } from '../device/given-file.ts';
import { Bar } from '../parts/bar.tsx';
import { HandPractice } from '../parts/hand-practice.tsx';
import { lazyScreen } from '../parts/lazy.tsx';
import { Messages } from '../parts/messages.tsx';
import { TakeIn } from '../parts/take-in.tsx';
import { practice, readHistory } from '../practices.ts';
import { href, route } from '../route.ts';
import { handoverWords } from '../words/handover-words.ts';
import { AnalystPart } from './analyst-part.tsx';
import { ErasePart } from './erase-part.tsx';
import { TwinsPart } from './twins-part.tsx';

/** What passes between this phone and others, and what goes off it. */
export function HandoverScreen({ what }: { what: string | undefined }) {
  if (what === 'show') return <Show />;
  if (what === 'read') return <Read />;
  if (what === 'give') return <GiveCard player={route.value[2] ?? ''} />;
  if (what === 'card') return <Card link={route.value[2] ?? ''} />;
  if (what === 'club') return <Club />;
  return <Ways />;
}

/** Codes and camera come when they are asked for. */
const Show = lazyScreen(() => import('./show-screen.tsx').then((file) => file.ShowScreen));
const Read = lazyScreen(() => import('./read-screen.tsx').then((file) => file.ReadScreen));

const GiveCard = lazyScreen(() =>
  import('./give-card-screen.tsx').then((file) => file.GiveCardScreen),
);
const Card = lazyScreen(() => import('./card-screen.tsx').then((file) => file.CardScreen));

const Club = lazyScreen(() => import('../club/club-screen.tsx').then((file) => file.ClubScreen));

function Ways() {
  const t = handoverWords.value;
  const [given, setGiven] = useState<File>();
  useEffect(() => void readHistory().catch(() => {}), []);
  useEffect(() => receiveFile(setGiven), []);
  return (
    <>
      <main class="page">
        <header>
          <h1>{t.title}</h1>
        </header>
        <Messages />
        <p>{t.means}</p>
        <section class="part" aria-labelledby="by-code">
          <h2 id="by-code">{t.code.title}</h2>
          <p>{t.code.means}</p>
          <div class="row">
            {practice.value && (
              <a class="button" href={href('handover', 'show')}>
                {t.show.title}
              </a>
            )}
            <a class="button" href={href('handover', 'read')}>
              {t.read.title}
            </a>
          </div>
        </section>
        <section class="part" aria-labelledby="by-file">
          <h2 id="by-file">{t.file.title}</h2>
          <p>{t.file.means}</p>
          {practice.value ? <HandPractice /> : <p class="faint">{t.file.none}</p>}
          <TakeIn given={given} />
        </section>
        <section class="part" aria-labelledby="club">
          <h2 id="club">{t.club.title}</h2>
          <p>{t.club.means}</p>
          <div class="row">
            <a class="button" href={href('handover', 'club')}>
              {t.club.open}
            </a>
          </div>
        </section>
        <TwinsPart />
        <AnalystPart />
        <ErasePart />
      </main>
      <Bar />
    </>
  );
}
