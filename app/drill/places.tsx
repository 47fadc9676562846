import { useState } from 'preact/hooks';
import type { Place } from '../../core/court/place.ts';
import { markerUses } from '../../core/drill/drill.ts';
import { Button } from '../parts/button.tsx';
import { CourtDrawing } from '../parts/court-drawing.tsx';
import { whereabouts } from '../parts/whereabouts.ts';
import { cardWords } from '../words/card-words.ts';
import { type Draft, drawnOf, MOST_MARKERS, withMarker, withTarget, withUse } from './draft.ts';
import { Choice, FaultOf, MetresField } from './fields.tsx';
import type { Fault } from './read-draft.ts';
import { isUnread, type Metres, placeOf } from './spot.ts';
import { type Thing, thingsOf, touched } from './things.ts';

/** What a thing is called where it is chosen. */
export function nameOf({ what, number }: Thing): string {
  const t = cardWords.value;
  switch (what) {
    case 'start':
      return t.starts(number);
    case 'recover':
      return t.recovers(number);
    case 'marker':
      return t.marker(number);
    case 'target':
      return t.target;
    case 'struck':
      return t.struck(number);
    case 'lands':
      return t.lands(number);
  }
}

/** Where everything is: chosen, then put by a touch on the court or by metres. */
export function Places({
  draft,
  onChange,
  chosen: key,
  onChoose,
  faults,
}: {
  draft: Draft;
  onChange: (draft: Draft) => void;
  /** The key of the thing that a touch puts. */
  chosen: string;
  onChoose: (key: string) => void;
  faults: readonly Fault[];
}) {
  const t = cardWords.value;
  const [refused, setRefused] = useState<string>();
  const things = thingsOf(draft);
  const chosen = things.find((thing) => thing.key === key) ?? things[0];
  if (!chosen) return null;

  const choose = (thing: string) => {
    setRefused(undefined);
    onChoose(thing);
  };
  const change = (next: Draft) => {
    setRefused(undefined);
    onChange(next);
  };
  const touch = (at: Place) => {
    const touch = touched(chosen, at);
    if ('spot' in touch) change(chosen.put(touch.spot));
    else if (touch.refused === 'off') setRefused(t.refused.off);
    else setRefused(t.refused.side[chosen.side ?? 'near']);
  };
  const add = (next: Draft, thing: string) => {
    change(next);
    choose(thing);
  };
  const button = (thing: Thing) => (
    <Button
      key={thing.key}
      aria-pressed={thing === chosen}
      class={isFaulty(thing, faults) ? 'drill-thing-faulty' : undefined}
      onClick={() => choose(thing.key)}
    >
      {nameOf(thing)}
    </Button>
  );
  const isBall = ({ what }: Thing) => what === 'struck' || what === 'lands';
  return (
    <>
      <p>{t.choose}</p>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset would draw a box and a legend */}
      <div class="drill-things" role="group" aria-label={t.things}>
        {things.filter((thing) => !isBall(thing)).map(button)}
        <Button
          disabled={draft.markers.length >= MOST_MARKERS}
          onClick={() => add(withMarker(draft), `marker-${draft.markers.length}`)}
        >
          {t.addMarker}
        </Button>
        {!draft.target && (
          <Button onClick={() => add(withTarget(draft), 'target')}>{t.addTarget}</Button>
        )}
      </div>
      {things.some(isBall) && (
        <details open={isBall(chosen)}>
          <summary>{t.path}</summary>
          <p class="small">{t.pathMeans}</p>
          {/* biome-ignore lint/a11y/useSemanticElements: a fieldset would draw a box and a legend */}
          <div class="drill-things" role="group" aria-label={t.path}>
            {things.filter(isBall).map(button)}
          </div>
        </details>
      )}
      <figure class="drill-court">
        <CourtDrawing
          drill={drawnOf(draft)}
          label={t.drawing}
          chosen={placeOf(chosen.at)}
          onTouch={touch}
        />
      </figure>
      <div class="drill-chosen">
        <h3>{nameOf(chosen)}</h3>
        <p role="status">{refused ?? whereabouts(placeOf(chosen.at), 'full')}</p>
        <ChosenFields draft={draft} thing={chosen} onChange={change} faults={faults} />
      </div>
    </>
  );
}

/** Whether something of a thing is to be put right; the target's measures are its own. */
export const isFaulty = ({ key }: Thing, faults: readonly Fault[]): boolean =>
  faults.some(({ field }) => field === key || (key === 'target' && field.startsWith('target-')));

function ChosenFields({
  draft,
  thing,
  onChange,
  faults,
}: {
  draft: Draft;
  thing: Thing;
  onChange: (draft: Draft) => void;
  faults: readonly Fault[];
}) {
  const t = cardWords.value;
  const { at, put, without } = thing;
  const faultOf = (field: string) => faults.find((fault) => fault.field === field);
  // A number that cannot be read is wrong in its own field, a place off the court in both.
  const fault = faultOf(thing.key);
  const isNumber = fault?.reason === 'number';
  const metresOf = (metres: Metres) => ({
    metres,
    fault: isNumber && !isUnread(metres) ? undefined : fault,
    saidAt: isNumber ? undefined : 'place',
  });
  const marker = thing.what === 'marker' ? draft.markers[thing.number] : undefined;
  const target = thing.what === 'target' ? draft.target : undefined;
  return (
    <>
      {marker && (
        <Choice
          label={t.use}
          value={marker.use}
          values={markerUses.map((use) => [use, t.uses[use]] as const)}
          onChange={(use) => onChange(withUse(draft, thing.number, use))}
        />
      )}
      {target && draft.rule === 'on-target' && <p class="small">{t.targetMirrored}</p>}
      {!thing.side && (
        <Choice
          label={t.half}
          value={at.side}
          values={(['near', 'far'] as const).map((side) => [side, t.side[side]] as const)}
          onChange={(side) => onChange(put({ ...at, side }))}
        />
      )}
      <MetresField
        field="net"
        label={t.fromNet}
        {...metresOf(at.net)}
        onChange={(net) => onChange(put({ ...at, net }))}
      />
      <div class="drill-pair">
        <MetresField
          field="centre"
          label={t.fromCentre}
          {...metresOf(at.centre)}
          onChange={(centre) => onChange(put({ ...at, centre }))}
        />
        <Choice
          label={t.hand}
          value={at.hand}
          values={(['left', 'right'] as const).map((hand) => [hand, t.hands[hand]] as const)}
          onChange={(hand) => onChange(put({ ...at, hand }))}
        />
      </div>
      {!isNumber && <FaultOf field="place" fault={fault} />}
      {target && (
        <div class="drill-pair">
          {(['width', 'length'] as const).map((side) => (
            <MetresField
              key={side}
              field={`target-${side}`}
              label={t.measures[side]}
              metres={target[side]}
              fault={faultOf(`target-${side}`)}
              onChange={(metres) => onChange({ ...draft, target: { ...target, [side]: metres } })}
            />
          ))}
        </div>
      )}
      <p class="small faint">{t.leftAndRight}</p>
      {without && thing.what !== 'start' && thing.what !== 'recover' && (
        <Button onClick={() => onChange(without())}>{t.without[thing.what]}</Button>
      )}
    </>
  );
}
