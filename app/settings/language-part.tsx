import { prefs, setPrefs } from '../device/prefs.ts';
import { deskWords } from '../words/desk-words.ts';
import { languages, type Spoken, spoken } from '../words/languages.ts';
import { Choice } from './choice.tsx';

const choices = ['phone', ...spoken] as const;

/** The language of the app; the screen takes it as soon as it is chosen. */
export function LanguagePart() {
  const t = deskWords.value.settings;
  const names = {
    phone: t.languageOfPhone,
    ...(Object.fromEntries(spoken.map((code) => [code, languages[code].name])) as Record<
      Spoken,
      string
    >),
  };
  return (
    <Choice
      legend={t.language}
      values={choices}
      value={prefs.value.language}
      names={names}
      onChange={(language) => setPrefs({ language })}
    />
  );
}
