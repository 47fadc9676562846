import { prefs, setPrefs } from '../device/prefs.ts';
import { sound, unlockSound } from '../device/sound.ts';
import { canSay } from '../device/voice.ts';
import { Button } from '../parts/button.tsx';
import { deskWords } from '../words/desk-words.ts';
import { words } from '../words/words.ts';
import { Choice } from './choice.tsx';
import { Switch } from './switch.tsx';

const volumes = ['off', 'quiet', 'loud'] as const;
const hands = ['right', 'left'] as const;

/** How the phone behaves at the side of the court. */
export function CourtPart() {
  const t = deskWords.value.settings;
  const { sound: volume, click, sayPairs, hand, keys } = prefs.value;
  const speaks = canSay(words.value.language);
  return (
    <section class="part" aria-labelledby="at-court">
      <h2 id="at-court">{t.atCourt}</h2>
      <Choice
        legend={t.sound}
        values={volumes}
        value={volume}
        names={t.sounds}
        onChange={(sound) => setPrefs({ sound })}
      />
      <p class="small">{t.soundMeans}</p>
      {volume !== 'off' && (
        <>
          <Button
            onClick={() => {
              unlockSound();
              sound('half-minute');
            }}
          >
            {t.tryIt}
          </Button>
          <Switch label={t.click} on={click} onChange={(click) => setPrefs({ click })} />
          {speaks ? (
            <Switch
              label={t.sayPairs}
              on={sayPairs}
              onChange={(sayPairs) => setPrefs({ sayPairs })}
            />
          ) : (
            <p class="small">{t.noVoice}</p>
          )}
        </>
      )}
      <Choice
        legend={t.hand}
        values={hands}
        value={hand}
        names={t.hands}
        onChange={(hand) => setPrefs({ hand })}
      />
      <Switch label={t.keys} means={t.keysMean} on={keys} onChange={(keys) => setPrefs({ keys })} />
    </section>
  );
}
