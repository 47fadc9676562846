import { useState } from 'preact/hooks';
import type { Place } from '../../core/court/place.ts';
import {
  type Drill,
  type RoleNumber,
  roleNumbers,
  targetOf,
  termsOf,
} from '../../core/drill/drill.ts';
import { touchesInSet } from '../../core/figures/counted.ts';
import { isStarter } from '../../core/ledger/library.ts';
import { squadSettings } from '../ledger.ts';
import { Button } from '../parts/button.tsx';
import { DrillCautions } from '../parts/cautions.tsx';
import { DrillRun } from '../parts/drill-run.tsx';
import { Foot } from '../parts/foot.tsx';
import { Messages } from '../parts/messages.tsx';
import { SteppedCourt, squadLanes } from '../parts/squad-court.tsx';
import { lengthOf, whereabouts } from '../parts/whereabouts.ts';
import { DrillFocus } from '../quality/drill-focus.tsx';
import { go } from '../route.ts';
import { cardWords } from '../words/card-words.ts';
import { wholeTextOf } from '../words/drill-instructions.ts';
import { words } from '../words/words.ts';
import { dropDrill, isPlanned } from './actions.ts';
import { dropDraft } from './stored-draft.ts';

/** A drill as a coach explains it and sets it out. */
export function DrillCard({ drill, onChange }: { drill: Drill; onChange: () => void }) {
  const t = cardWords.value;
  const text = wholeTextOf(drill);
  const lanes = squadLanes(drill);
  const isVersion = isStarter(drill.id) && drill.text !== undefined;
  return (
    <main class="page">
      <header class="drill-head">
        <h1 class="break">{text.name}</h1>
      </header>
      <Messages />
      <div class="drill-card">
        <div class="drill-court">
          <SteppedCourt drill={drill} />
        </div>
        <dl class="drill-facts">
          {text.intention && (
            <>
              <dt>{t.intention}</dt>
              <dd>{text.intention}</dd>
            </>
          )}
          {text.cue && (
            <>
              <dt>{t.cue}</dt>
              <dd>
                <b>{text.cue}</b>
              </dd>
            </>
          )}
          <dt>{t.counting}</dt>
          <dd>
            <b>{words.value.setCounts(drill.rule, drill.size)}</b>
          </dd>
          <DrillRun drill={drill} />
          <dt>{t.inSet}</dt>
          {drill.rule === 'on-target' ? (
            <dd>{words.value.named(t.whoStrikes, struck(drill, drill.shots[0]?.role ?? 0))}</dd>
          ) : (
            roleNumbers
              .filter((role) => drill.shots.some((shot) => shot.role === role))
              .map((role) => (
                <dd key={role}>
                  {words.value.named(t.role(role, text.roles[role]), struck(drill, role))}
                </dd>
              ))
          )}
          <dt>{t.family}</dt>
          <dd>{words.value.families[drill.family]}</dd>
          <dt>{t.perCourt}</dt>
          <dd class="number">{words.value.number(lanes.length)}</dd>
        </dl>
      </div>
      <DrillCautions shots={drill.shots} />
      <section class="part" aria-labelledby="places">
        <h2 id="places">{t.places}</h2>
        <Places drill={lanes[0] ?? drill} />
        <p class="small faint">{t.leftAndRight}</p>
      </section>
      <DrillFocus drill={drill.id} />
      <section class="part">
        {isVersion && <p>{t.yours}</p>}
        <Button as="main" onClick={onChange}>
          {t.change}
        </Button>
        {(isVersion || !isStarter(drill.id)) && <Drop drill={drill} isVersion={isVersion} />}
      </section>
      <Foot>
        <Button onClick={() => go('block')}>{words.value.back}</Button>
      </Foot>
    </main>
  );
}

/** What a role strikes in one set, as people say it. */
function struck(drill: Drill, role: RoleNumber): string {
  const t = cardWords.value.strokes;
  const touches = Object.entries(touchesInSet(termsOf(drill), role));
  return words.value.list(touches.map(([stroke, n]) => t[stroke as keyof typeof t](n)));
}

function Places({ drill }: { drill: Drill }) {
  const t = cardWords.value;
  const where = (place: Place) => whereabouts(place, squadSettings.value.size);
  const told: [name: string, where: string][] = [];
  for (const role of roleNumbers) {
    const { start, recover } = drill.roles[role];
    if (start.x === recover.x && start.y === recover.y) {
      told.push([t.startsAndRecovers(role), where(start)]);
    } else {
      told.push([t.starts(role), where(start)], [t.recovers(role), where(recover)]);
    }
  }
  for (const { at, use } of drill.markers) told.push([`▲ ${t.markerFor[use]}`, where(at)]);
  for (const role of roleNumbers) {
    const target = targetOf(drill, role);
    if (!target) continue;
    const size = t.targetSize(lengthOf(target.width), lengthOf(target.length));
    told.push([t.targetOf(role), `${size} ${where(target)}`]);
  }
  return (
    <dl class="drill-places">
      {told.map(([name, where], index) => (
        <div key={index}>
          <dt>{name}</dt>
          <dd>{where}</dd>
        </div>
      ))}
    </dl>
  );
}

/** Takes an own drill out, or puts a starter drill back; the second press means it. */
function Drop({ drill, isVersion }: { drill: Drill; isVersion: boolean }) {
  const t = cardWords.value;
  const [sure, setSure] = useState(false);
  if (!isVersion && isPlanned(drill.id)) return <p class="small">{t.inBlock}</p>;
  const press = () => {
    if (!sure) {
      setSure(true);
      return;
    }
    dropDrill(drill.id);
    dropDraft(drill.id);
    if (isVersion) setSure(false);
    else go('block');
  };
  const [first, second] = isVersion ? [t.putBack, t.putBackSure] : [t.drop, t.dropSure];
  return (
    <>
      <Button onClick={press}>{sure ? second : first}</Button>
      {sure && <Button onClick={() => setSure(false)}>{words.value.cancel}</Button>}
      <p class="small">{isVersion ? t.putBackMeans : t.dropMeans}</p>
    </>
  );
}
