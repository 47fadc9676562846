import { append, squadSettings } from '../ledger.ts';
import { words } from '../words/words.ts';
import { Button } from './button.tsx';

/** So many courts are asked for by one touch; more can be set in the settings. */
const ASKED = 6;

/** How many courts there are, asked once: until it is known nobody can be told to wait for one. */
export function CourtsAsked() {
  const t = words.value.courts;
  const settings = squadSettings.value;
  if (settings.courts !== undefined) return null;
  return (
    <section class="part" aria-labelledby="courts-asked">
      <h2 id="courts-asked">{t.howMany}</h2>
      <div class="row">
        {Array.from({ length: ASKED }, (_, at) => at + 1).map((courts) => (
          <Button
            key={courts}
            aria-label={t.so(courts)}
            onClick={() => append({ kind: 'squad-set', ...settings, courts })}
          >
            {words.value.number(courts)}
          </Button>
        ))}
      </div>
      <p class="small faint">{t.howManyMeans}</p>
    </section>
  );
}
