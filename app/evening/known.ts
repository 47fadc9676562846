import { computed } from '@preact/signals';
import { lastWeeks } from '../../core/figures/review.ts';
import { sizeFits } from '../../core/figures/size-fit.ts';
import { drillsOn } from '../../core/ledger/library.ts';
import { findings } from '../../core/planning/findings.ts';
import { leftOut } from '../../core/planning/left-out.ts';
import { meetingsOf } from '../../core/planning/meetings.ts';
import { nextPartners } from '../../core/planning/next-partners.ts';
import { pairLevels } from '../../core/planning/pair-levels.ts';
import { whatIsDue } from '../../core/planning/what-is-due.ts';
import { currentPlan } from '../actions.ts';
import { today } from '../device/clock.ts';
import { estimated, paceNow } from '../estimates.ts';
import { library, squad, wishes } from '../ledger.ts';
import { levels } from '../levels.ts';

/*
 * What the evening's findings rest on, each a figure that has a screen of its own: the page and the
 * screens behind it read the same, so that a touch leads from the sentence to what it is made of.
 */

/** Everybody who is asked for, in the squad's order. */
export const asking = computed(() =>
  [...squad.value.values()].filter(({ resting }) => !resting).map(({ id }) => id),
);

export const strokesLeftOut = computed(() => leftOut(estimated.value, today(), asking.value));

/** How far back a size is looked at: what was played longer ago says little of the next block. */
export const SIZE_WEEKS = 4;

export const fits = computed(() =>
  levels.value
    ? sizeFits(
        levels.value,
        lastWeeks(estimated.value, SIZE_WEEKS).now,
        currentPlan().seconds,
        paceNow,
      )
    : [],
);

export const partnersNext = computed(() => {
  const given = [...squad.value.values()].flatMap(({ id, level }) =>
    level === undefined ? [] : [[id, level] as const],
  );
  return nextPartners(
    {
      here: asking.value,
      levels: pairLevels(asking.value, new Map(given), levels.value),
      meetings: meetingsOf(estimated.value, today()),
      wishes: wishes.value,
    },
    estimated.value,
    today(),
  );
});

export const evening = computed(() =>
  findings({
    players: asking.value,
    fit: levels.value,
    left: strokesLeftOut.value,
    sizes: fits.value,
    partners: partnersNext.value,
    drills: drillsOn(library.value),
    daysSince: whatIsDue(estimated.value, today(), []).drillDays,
  }),
);
