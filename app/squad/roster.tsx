import { useState } from 'preact/hooks';
import { type RosterFault, type RosterPlayer, readRoster } from '../../core/exchange/roster.ts';
import { type DecodedText, decodeText } from '../device/text.ts';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import { deskWords } from '../words/desk-words.ts';
import { addPlayers, namesBeside } from './actions.ts';

/** No list of a squad is longer; a film chosen by mistake is not read into the phone's memory. */
const MOST_BYTES = 1_000_000;

type Outcome =
  | { added: number }
  | { faults: RosterFault[] }
  | { failed: string }
  /** Names whose letters are a guess, for a person to look at. */
  | { guessed: RosterPlayer[] };

/** A whole squad at once, from a pasted list or a file: everything is taken, or nothing. */
export function Roster() {
  const t = deskWords.value.squad;
  const [pasted, setPasted] = useState('');
  const [outcome, setOutcome] = useState<Outcome>();

  const read = (decoded: DecodedText | undefined) => {
    const reading = readRoster(decoded?.text, namesBeside());
    if ('faults' in reading) setOutcome(reading);
    else if (decoded?.guessed) setOutcome({ guessed: reading.players });
    else take(reading.players);
  };
  const take = (players: RosterPlayer[]) => {
    addPlayers(players);
    setOutcome({ added: players.length });
    setPasted('');
  };

  const choose = async (field: HTMLInputElement) => {
    const file = field.files?.[0];
    if (!file) return;
    try {
      if (file.size > MOST_BYTES) setOutcome({ failed: t.fileTooLarge });
      else read(decodeText(new Uint8Array(await file.arrayBuffer())));
    } catch {
      setOutcome({ failed: t.fileUnread });
    }
    // The same file, mended, can be chosen again.
    field.value = '';
  };

  return (
    <section class="part" aria-labelledby="roster">
      <h2 id="roster">{t.fromList}</h2>
      <p>{t.listShape}</p>
      <pre class="squad-example">{t.listExample}</pre>
      <label for="pasted">{t.pasted}</label>
      <textarea
        id="pasted"
        rows={4}
        spellcheck={false}
        value={pasted}
        onInput={(event) => setPasted(event.currentTarget.value)}
      />
      <Button
        disabled={pasted.trim() === ''}
        onClick={() => read({ text: pasted, guessed: false })}
      >
        {t.takePasted}
      </Button>
      <label for="file">{t.chooseFile}</label>
      <input id="file" type="file" onChange={(event) => void choose(event.currentTarget)} />
      {outcome && 'guessed' in outcome && (
        <Guessed
          players={outcome.guessed}
          onYes={() => take(outcome.guessed)}
          onNo={() => setOutcome({ failed: t.wrongLetters })}
        />
      )}
      {outcome && !('guessed' in outcome) && <Said outcome={outcome} />}
    </section>
  );
}

/** What a file may say, before it is taken. */
function Guessed({
  players,
  onYes,
  onNo,
}: {
  players: readonly RosterPlayer[];
  onYes: () => void;
  onNo: () => void;
}) {
  const t = deskWords.value.squad;
  return (
    <Notice>
      <div class="stack">
        <p>{t.guessed}</p>
        <ul class="squad-guessed">
          {players.map(({ name }) => (
            <li key={name}>{name}</li>
          ))}
        </ul>
        <div class="row">
          <Button onClick={onYes}>{t.rightLetters}</Button>
          <Button onClick={onNo}>{t.noLetters}</Button>
        </div>
      </div>
    </Notice>
  );
}

function Said({ outcome }: { outcome: Exclude<Outcome, { guessed: RosterPlayer[] }> }) {
  const t = deskWords.value.squad;
  if ('added' in outcome) return <Notice>{t.addedMany(outcome.added)}</Notice>;
  if ('failed' in outcome) return <Notice as="fault">{outcome.failed}</Notice>;
  return (
    <Notice as="fault">
      <p>{t.nothingTaken}</p>
      <ul class="squad-faults">
        {outcome.faults.map(({ row, reason, value }) => (
          <li key={`${row}-${reason}`}>
            <b>{t.row(row)}</b> {t.rosterFaults[reason](value ?? '')}
          </li>
        ))}
      </ul>
    </Notice>
  );
}
