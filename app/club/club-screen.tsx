import { useState } from 'preact/hooks';
import { roundRuns } from '../actions.ts';
import { dateOf } from '../device/clock.ts';
import { prefs } from '../device/prefs.ts';
import { Page } from '../handover/page.tsx';
import { phoneName } from '../handover/phone-name.ts';
import { append, forgetErased } from '../ledger.ts';
import { Button } from '../parts/button.tsx';
import { playerName } from '../parts/names.ts';
import { Notice } from '../parts/notice.tsx';
import { dateOfPractice, summaries } from '../practices.ts';
import { handoverWords } from '../words/handover-words.ts';
import { words } from '../words/words.ts';
import { canUseFolder, chooseFolder, forgetFolder } from './folder.ts';
import { keepMeeting, meet, meeting } from './meet.ts';
import { type Asked, begin, type Memory, memory, remember } from './memory.ts';
import { folderAt } from './webdav.ts';

/** A place that a club's phones share: a folder, or one on the server that the app comes from. */
export function ClubScreen() {
  const t = handoverWords.value.club;
  return (
    <Page title={t.title}>
      <p>{t.means}</p>
      {prefs.value.demo ? (
        <p>{t.notInDemo}</p>
      ) : memory.value ? (
        <Joined known={memory.value} />
      ) : (
        <Join />
      )}
    </Page>
  );
}

function join(by: Memory['by'], account?: Memory['account']): void {
  begin(by, account);
  void meet(true).then(keepMeeting);
}

function Join() {
  const t = handoverWords.value.club;
  const [path, setPath] = useState('club/');
  const [user, setUser] = useState('');
  const [password, setPassword] = useState('');
  const isHere = folderAt(path) !== undefined;
  return (
    <>
      <form
        class="part"
        aria-labelledby="by-server"
        onSubmit={(event) => {
          event.preventDefault();
          join('webdav', { path, user, password });
        }}
      >
        <h2 id="by-server">{t.server}</h2>
        <p>{t.serverMeans}</p>
        <label>
          {t.path}
          <input value={path} onInput={(event) => setPath(event.currentTarget.value)} />
        </label>
        {!isHere && <Notice as="fault">{t.faults.elsewhere}</Notice>}
        <label>
          {t.user}
          <input
            value={user}
            autocomplete="username"
            autocapitalize="none"
            onInput={(event) => setUser(event.currentTarget.value)}
          />
        </label>
        <label>
          {t.password}
          <input
            type="password"
            value={password}
            autocomplete="current-password"
            onInput={(event) => setPassword(event.currentTarget.value)}
          />
        </label>
        <p class="small">{t.passwordMeans}</p>
        <Button type="submit" as="main" disabled={!isHere}>
          {t.join}
        </Button>
      </form>
      {canUseFolder() && (
        <section class="part" aria-labelledby="by-folder">
          <h2 id="by-folder">{t.folder}</h2>
          <p>{t.folderMeans}</p>
          <Button onClick={() => void chooseFolder().then((chosen) => chosen && join('folder'))}>
            {t.chooseFolder}
          </Button>
        </section>
      )}
    </>
  );
}

function Joined({ known }: { known: Memory }) {
  const t = handoverWords.value.club;
  const state = meeting.value;
  const waits = summaries.value.filter(({ opened }) => opened > known.written).length;
  const faults = Object.entries(known.faults);
  const leave = () => {
    remember(undefined);
    void forgetFolder().catch(() => {});
  };
  return (
    <section class="part" aria-labelledby="joined">
      <h2 id="joined">{known.by === 'folder' ? t.folder : t.at(known.account?.path ?? '')}</h2>
      <p role="status">
        {state === 'now'
          ? t.now
          : known.met === undefined
            ? t.never
            : t.met(words.value.date(dateOf(known.met)))}
      </p>
      {state === 'round' && <Notice>{t.round}</Notice>}
      {state && state !== 'now' && state !== 'round' && (
        <Notice as="fault">{t.faults[state]}</Notice>
      )}
      {waits > 0 && <p>{t.waits(waits)}</p>}
      {faults.map(([name, reason]) => (
        <Notice key={name}>
          {reason === 'shared'
            ? t.shared
            : t.unread(phoneName(name.replace(/^rally-ledger-|\.txt$/g, '')))}
        </Notice>
      ))}
      {known.asked.map((asked) => (
        <Erasure key={asked.of} asked={asked} known={known} />
      ))}
      <Button as="main" disabled={state === 'now' || roundRuns()} onClick={() => void meet(true)}>
        {t.meet}
      </Button>
      <Button onClick={leave}>{t.leave}</Button>
      <p class="small">{t.leaveMeans}</p>
    </section>
  );
}

/** What another phone erased and is here still: it goes only if the coach says so. */
function Erasure({ asked: { kind, of }, known }: { asked: Asked; known: Memory }) {
  const t = handoverWords.value;
  const name =
    kind === 'player-erased'
      ? playerName(of)
      : t.practiceOf(words.value.date(dateOfPractice(of) ?? ''));
  const answer = (erases: boolean) => {
    remember({ ...known, asked: known.asked.filter((each) => each.of !== of) });
    if (!erases) return;
    append(kind === 'player-erased' ? { kind, player: of } : { kind, erased: of });
    void forgetErased().catch(() => {});
  };
  return (
    <Notice>
      <p class="break">{t.arriving.erases}</p>
      <div class="row">
        <Button onClick={() => answer(true)}>
          <span class="break">{t.arriving.erase(name)}</span>
        </Button>
        <Button onClick={() => answer(false)}>{t.club.keep(name)}</Button>
      </div>
    </Notice>
  );
}
