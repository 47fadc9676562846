import { practiceAt } from '../device/records.ts';
import { damaged } from '../ledger.ts';
import { dateOfPractice } from '../practices.ts';
import { words } from '../words/words.ts';

/**
 * Where the damaged records are, as people say it: each practice, by its date where that is known,
 * and the squad.
 */
export function damagedPlaceNames(): string[] {
  const t = words.value.damagedPlaces;
  const practices = new Set(damaged.value.map((each) => practiceAt(each.key)));
  return [...practices].map((id) => {
    if (id === undefined) return t.standing;
    const date = dateOfPractice(id);
    return date === undefined ? t.undated : t.practice(date);
  });
}
