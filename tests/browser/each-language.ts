import { desk as deskEn } from '../../app/words/desk.en.ts';
import { desk as deskEs } from '../../app/words/desk.es.ts';
import { desk as deskFr } from '../../app/words/desk.fr.ts';
import { en } from '../../app/words/en.ts';
import { es } from '../../app/words/es.ts';
import { fr } from '../../app/words/fr.ts';
import { look as lookEn } from '../../app/words/look.en.ts';
import { look as lookEs } from '../../app/words/look.es.ts';
import { look as lookFr } from '../../app/words/look.fr.ts';
import { planning as planningEn } from '../../app/words/planning.en.ts';
import { planning as planningEs } from '../../app/words/planning.es.ts';
import { planning as planningFr } from '../../app/words/planning.fr.ts';

/** EVERY=1 walks each language in both themes; else each theme is walked, and each language. */
const EVERY = process.env.EVERY !== undefined;

const LANGUAGES = [
  { locale: 'en-GB', t: { ...en, ...deskEn }, planning: planningEn, look: lookEn },
  { locale: 'fr-FR', t: { ...fr, ...deskFr }, planning: planningFr, look: lookFr },
  { locale: 'es-MX', t: { ...es, ...deskEs }, planning: planningEs, look: lookEs },
];

/** The phones of three countries, light and dark by turns, and what the app says on them. */
export const EACH_LANGUAGE = LANGUAGES.flatMap((language, place) =>
  (['light', 'dark'] as const)
    .filter((_, turn) => EVERY || turn === place % 2)
    .map((theme) => ({ ...language, theme })),
);
