import { Fragment } from 'preact';
import type { Drill } from '../../core/drill/drill.ts';
import { cardWords } from '../words/card-words.ts';
import { instructionsOf, rolesLines } from '../words/drill-instructions.ts';
import { setupOf } from './setup.ts';

/**
 * How a drill is run, for somebody who never saw it, inside a list of facts: what each role does,
 * who feeds, what counts, where the markers lie. Of what is not known nothing is said.
 */
export function DrillRun({ drill }: { drill: Drill }) {
  const t = cardWords.value;
  const { feed, counts, ...roles } = instructionsOf(drill);
  const facts: [name: string, lines: string[]][] = [
    [t.roles, rolesLines(roles)],
    [t.feed, feed ? [feed] : []],
    [t.counts, counts ? [counts] : []],
    [t.setup, setupOf(drill)],
  ];
  return facts
    .filter(([, lines]) => lines.length > 0)
    .map(([name, lines]) => (
      <Fragment key={name}>
        <dt>{name}</dt>
        {lines.map((line) => (
          <dd key={line}>{line}</dd>
        ))}
      </Fragment>
    ));
}
