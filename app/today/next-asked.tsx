import { currentPlan, plan } from '../actions.ts';
import { library } from '../ledger.ts';
import { asked } from '../next-asks.ts';
import { Button } from '../parts/button.tsx';
import { namesOf } from '../parts/names.ts';
import { textOf } from '../words/drill-text.ts';
import { lookWords } from '../words/look-words.ts';

/**
 * What the coach asked for at this practice: the drills go into the block by a touch each, or with a
 * proposed block; the pairs stand already where the pairs are proposed.
 */
export function NextAsked() {
  const t = lookWords.value.asked;
  const present = currentPlan();
  const drills = asked.value.drills.flatMap((id) => library.value.drills.get(id) ?? []);
  const lacking = drills.filter(({ id }) => present.steps.every(({ drill }) => drill !== id));
  const { pairs } = asked.value;
  if (lacking.length === 0 && pairs.length === 0) return null;
  return (
    <div class="stack">
      {lacking.map((drill) => (
        <Button
          key={drill.id}
          onClick={() =>
            plan({
              ...present,
              steps: [...present.steps, { drill: drill.id, rounds: 1, partners: 'keep' }],
            })
          }
        >
          <span class="break">{t.putIn(textOf(drill).name)}</span>
        </Button>
      ))}
      {pairs.length > 0 && <p class="break">{t.pairs(pairs.map(namesOf))}</p>}
    </div>
  );
}
