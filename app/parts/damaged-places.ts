import { damagedPlaces } from '../ledger.ts';
import { words } from '../words/words.ts';

/** Where the damaged records are, as people say it. */
export const damagedPlaceNames = (): string[] => {
  const t = words.value.damagedPlaces;
  return damagedPlaces.value.map(({ practice, date }) =>
    date !== undefined ? t.practice(date) : practice !== undefined ? t.undated : t.standing,
  );
};
