import { hurtPlaces } from '../ledger.ts';
import { words } from '../words/words.ts';

/** Where the hurt records are, as people say it. */
export const hurtPlaceNames = (): string[] => {
  const t = words.value.hurtPlaces;
  return hurtPlaces.value.map(({ practice, date }) =>
    date !== undefined ? t.practice(date) : practice !== undefined ? t.undated : t.standing,
  );
};
