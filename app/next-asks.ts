import { computed } from '@preact/signals';
import { isKnown } from '../core/ledger/entry.ts';
import { nextAsks } from '../core/planning/next-asks.ts';
import { standing } from './ledger.ts';
import { openPractice, summaries } from './practices.ts';

/** What the coach asked for at the next practice, until one was held after it. */
export const asked = computed(() => {
  const since = summaries.value
    .filter(({ practice }) => practice !== openPractice.value?.id)
    .map(({ opened }) => opened)
    .sort()
    .at(-1);
  return nextAsks(standing.value.filter(isKnown), since ?? '');
});
