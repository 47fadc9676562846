import type { Practice } from '../../core/ledger/practice.ts';
import { append } from '../ledger.ts';
import { playerName } from '../parts/names.ts';
import { qualityWords } from '../words/quality-words.ts';
import { EffortField, MinutesField } from './effort-fields.tsx';
import { tellEffort, withTold } from './tell-effort.ts';
import './quality.css';

/** Effort and minutes of everyone who was at a practice, entered in one go. */
export function EffortRows({ practice }: { practice: Practice }) {
  const t = qualityWords.value.effort;
  const { attended, efforts } = practice;
  const [first, ...others] = attended.map((player) => efforts?.[player]?.minutes);
  const together = others.every((minutes) => minutes === first) ? first : undefined;
  return (
    <section class="part" aria-labelledby="effort">
      <h2 id="effort">{t.title}</h2>
      {attended.length === 0 ? (
        <p>{t.nobody}</p>
      ) : (
        <>
          <p class="small">{t.askMeans}</p>
          <div class="stack">
            <b aria-hidden="true">{t.minutesAll}</b>
            <MinutesField
              label={t.minutesAll}
              value={together}
              onChange={(minutes) =>
                append(
                  ...attended.map((player) => ({
                    kind: 'effort-told' as const,
                    practice: practice.id,
                    player,
                    ...withTold(efforts?.[player], 'minutes', minutes),
                  })),
                )
              }
            />
          </div>
          <ul class="effort-rows">
            <li aria-hidden="true" class="small">
              <span />
              <b>{t.column}</b>
              <b>{t.minutes}</b>
            </li>
            {attended.map((player) => {
              const name = playerName(player);
              const told = efforts?.[player];
              return (
                <li key={player}>
                  <b class="break">{name}</b>
                  <EffortField
                    label={t.effortOf(name)}
                    value={told?.effort}
                    onChange={(effort) =>
                      tellEffort(practice, player, withTold(told, 'effort', effort))
                    }
                  />
                  <MinutesField
                    label={t.minutesOf(name)}
                    value={told?.minutes}
                    onChange={(minutes) =>
                      tellEffort(practice, player, withTold(told, 'minutes', minutes))
                    }
                  />
                </li>
              );
            })}
          </ul>
          <p class="small faint">{t.kept}</p>
        </>
      )}
    </section>
  );
}
