import { prefs, setPrefs } from '../device/prefs.ts';
import { deskWords } from '../words/desk-words.ts';
import { Choice } from './choice.tsx';

const languages = ['phone', 'en', 'fr', 'es'] as const;

/** The language of the app; the screen takes it as soon as it is chosen. */
export function LanguagePart() {
  const t = deskWords.value.settings;
  return (
    <Choice
      legend={t.language}
      values={languages}
      value={prefs.value.language}
      names={t.languages}
      onChange={(language) => setPrefs({ language })}
    />
  );
}
