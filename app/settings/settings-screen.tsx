import { useEffect } from 'preact/hooks';
import { version } from '../../package.json';
import { install, installed, installOffer } from '../device/install.ts';
import { askToPersist, persisted, readPersisted } from '../device/persist.ts';
import { prefs, setPrefs } from '../device/prefs.ts';
import { Bar } from '../parts/bar.tsx';
import { Button } from '../parts/button.tsx';
import { Messages } from '../parts/messages.tsx';
import { href } from '../route.ts';
import { deskWords } from '../words/desk-words.ts';
import { handoverWords } from '../words/handover-words.ts';
import { words } from '../words/words.ts';
import { Choice } from './choice.tsx';
import { CourtPart } from './court-part.tsx';
import { startDemo } from './demo.ts';
import { DemoState } from './demo-state.tsx';
import { LanguagePart } from './language-part.tsx';
import { SquadPart } from './squad-part.tsx';
import { StoragePart } from './storage-part.tsx';
import { Switch } from './switch.tsx';
import './settings.css';

/** How this phone shows things, and what there is to know of the app itself. */
export function SettingsScreen() {
  const t = deskWords.value.settings;
  return (
    <>
      <main class="page">
        <header>
          <h1>{t.title}</h1>
        </header>
        <Messages />
        <Ways />
        <Looks />
        <CourtPart />
        <SquadPart />
        <HomeScreen />
        <Keeping />
        <StoragePart />
        <Demo />
        <section class="part" aria-labelledby="about">
          <h2 id="about">{t.about}</h2>
          <p class="faint">{t.version(version)}</p>
        </section>
      </main>
      <Bar />
    </>
  );
}

/** The parts of the app that the bar has no room for. */
function Ways() {
  const t = deskWords.value.settings;
  return (
    <ul class="ruled settings-ways">
      <li>
        <a href={href('squad')}>{t.squad}</a>
      </li>
      <li>
        <a href={href('drill')}>{t.drills}</a>
      </li>
      <li>
        <a href={href('handover')}>{handoverWords.value.open}</a>
      </li>
      <li>
        <a href={href('help')}>{words.value.help}</a>
      </li>
    </ul>
  );
}

const themes = ['phone', 'light', 'dark'] as const;

function Looks() {
  const t = deskWords.value.settings;
  const { theme, initials } = prefs.value;
  return (
    <section class="part" aria-labelledby="looks">
      <h2 id="looks">{t.looks}</h2>
      <LanguagePart />
      <Choice
        legend={t.theme}
        values={themes}
        value={theme}
        names={t.themes}
        onChange={(theme) => setPrefs({ theme })}
      />
      <Switch
        label={t.initials}
        means={t.initialsMean}
        on={initials}
        onChange={(initials) => setPrefs({ initials })}
      />
    </section>
  );
}

function HomeScreen() {
  const t = deskWords.value.settings;
  return (
    <section class="part" aria-labelledby="home-screen">
      <h2 id="home-screen">{t.homeScreen}</h2>
      {installed.value ? (
        <p>{t.installed}</p>
      ) : (
        <>
          <p>{t.whyInstall}</p>
          {installOffer.value && <Button onClick={() => void install()}>{t.install}</Button>}
          <h3>{t.apple}</h3>
          <p>{t.appleHow}</p>
          <p class="small">{t.appleWhy}</p>
          <h3>{t.android}</h3>
          <p>{t.androidHow}</p>
        </>
      )}
    </section>
  );
}

function Keeping() {
  const t = deskWords.value.settings;
  useEffect(() => void readPersisted(), []);
  return (
    <section class="part" aria-labelledby="keeping">
      <h2 id="keeping">{t.keeping}</h2>
      <ul class="settings-promises">
        {t.promises.map((promise) => (
          <li key={promise}>{promise}</li>
        ))}
      </ul>
      <h3>{t.space}</h3>
      <p role="status">
        {t.kept[persisted.value === undefined ? 'unknown' : persisted.value ? 'yes' : 'no']}
      </p>
      {persisted.value === false && (
        <Button onClick={() => void askToPersist()}>{t.askToPersist}</Button>
      )}
    </section>
  );
}

/** While the demo is shown, every page has its way out at the top. */
function Demo() {
  const t = deskWords.value.settings;
  if (prefs.value.demo) return null;
  return (
    <section class="part" aria-labelledby="demo">
      <h2 id="demo">{t.demo}</h2>
      <p>{t.demoMeans}</p>
      <Button onClick={startDemo}>{t.loadDemo}</Button>
      <DemoState />
    </section>
  );
}
