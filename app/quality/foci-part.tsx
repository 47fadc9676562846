import type { FocusHeld, Held, SquadFocus } from '../../core/figures/focus-held.ts';
import { playerName } from '../parts/names.ts';
import { href } from '../route.ts';
import { focusQuestion } from '../words/focus-question.ts';
import { qualityWords } from '../words/quality-words.ts';

/** Each focus of the squad: now, before, and whether it slips; the players behind a touch. */
export function FociPart({ foci }: { foci: readonly SquadFocus[] }) {
  const t = qualityWords.value.looks;
  return (
    <>
      {foci.map((focus) => (
        <section key={focus.focus} class="part">
          <h2 class="break">{focusQuestion(focus.focus)}</h2>
          <HeldFacts focus={focus} />
          <details class="quality-more">
            <summary>{t.players}</summary>
            {focus.players.map((own) => (
              <div key={own.player}>
                <h3>
                  <a class="break" href={href('quality', own.player)}>
                    {playerName(own.player)}
                  </a>
                </h3>
                <HeldFacts focus={own} />
              </div>
            ))}
          </details>
        </section>
      ))}
      <p class="small faint">{t.shareMeans}</p>
      <p class="small faint">{t.changeMeans}</p>
    </>
  );
}

/** A focus now and before, with the word for its change. */
export function HeldFacts({ focus }: { focus: FocusHeld }) {
  const t = qualityWords.value.looks;
  return (
    <>
      <p class="quality-word">{focus.change ? t.change[focus.change] : t.changeUnknown}</p>
      <dl class="quality-facts">
        <div>
          <dt>{t.now}</dt>
          <dd class="number">{sayHeld(focus.now)}</dd>
        </div>
        <div>
          <dt>{t.before}</dt>
          <dd class="number">{sayHeld(focus.before)}</dd>
        </div>
      </dl>
    </>
  );
}

function sayHeld({ held, looks, share }: Held): string {
  const t = qualityWords.value.looks;
  return share
    ? `${t.share(share.share, share.low, share.high)}, ${t.of(held, looks)}`
    : t.few(looks);
}
