import type { Plan } from '../../core/round/block.ts';
import { MOST_CHECKS } from '../../core/round/spot-checks.ts';
import { library } from '../ledger.ts';
import { Stepper } from '../parts/stepper.tsx';
import { qualityWords } from '../words/quality-words.ts';
import { FocusChoice } from './focus-choice.tsx';
import { OwnFoci } from './own-foci.tsx';
import './quality.css';

/** What is looked at in the rounds of a block, and how often. */
export function BlockFocus({ plan, onChange }: { plan: Plan; onChange: (plan: Plan) => void }) {
  const t = qualityWords.value.focus;
  const { focus, checks = MOST_CHECKS.called, ...rest } = plan;
  const isLooked =
    focus !== undefined || plan.steps.some(({ drill }) => library.value.focusOf.has(drill));
  return (
    <section class="part">
      <FocusChoice
        label={t.ofBlock}
        value={focus}
        onChange={(chosen) =>
          onChange({
            ...rest,
            ...(plan.checks !== undefined && { checks: plan.checks }),
            ...(chosen !== undefined && { focus: chosen }),
          })
        }
      />
      {isLooked && (
        <>
          <div class="row quality-row">
            <b class="grow">{t.checks}</b>
            <Stepper
              label={t.checks}
              value={checks}
              least={0}
              most={MOST_CHECKS.called}
              onChange={(chosen) => onChange({ ...plan, checks: chosen })}
            />
          </div>
          <p class="small">{t.checksMean(MOST_CHECKS.tapped, MOST_CHECKS.called)}</p>
        </>
      )}
      <OwnFoci />
    </section>
  );
}
