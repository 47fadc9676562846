import type { Practice } from '../../core/ledger/practice.ts';
import { estimated } from '../estimates.ts';
import { Button } from '../parts/button.tsx';
import { practice } from '../practices.ts';
import { qualityWords } from '../words/quality-words.ts';
import { words } from '../words/words.ts';
import { efforts, MinutesField } from './effort-fields.tsx';
import { OwnFociHeld } from './own-foci-held.tsx';
import { tellEffort, withTold } from './tell-effort.ts';

/** On a player's own page: what was looked at, in words that help, and how hard the practice was. */
export function OwnQuality({ player }: { player: string }) {
  const last = practice.value;
  return (
    <>
      <OwnFociHeld summaries={estimated.value} player={player} />
      {last?.attended.includes(player) && <OwnEffort practice={last} player={player} />}
    </>
  );
}

function OwnEffort({ practice, player }: { practice: Practice; player: string }) {
  const t = qualityWords.value.effort;
  const told = practice.efforts?.[player];
  return (
    <section class="part" aria-labelledby="own-effort">
      <h2 id="own-effort">{t.ask}</h2>
      <p class="small">{t.askMeans}</p>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset would draw a box and a legend */}
      <div class="effort-pads" role="group" aria-label={t.ask}>
        {efforts.map((effort) => (
          <Button
            key={effort}
            class="number"
            aria-pressed={told?.effort === effort}
            onClick={() =>
              tellEffort(
                practice,
                player,
                withTold(told, 'effort', told?.effort === effort ? undefined : effort),
              )
            }
          >
            {words.value.number(effort)}
          </Button>
        ))}
      </div>
      <div class="stack">
        <b aria-hidden="true">{t.minutes}</b>
        <MinutesField
          label={t.minutes}
          value={told?.minutes}
          onChange={(minutes) => tellEffort(practice, player, withTold(told, 'minutes', minutes))}
        />
      </div>
    </section>
  );
}
