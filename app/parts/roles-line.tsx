import { rolesDiffer, type Terms } from '../../core/drill/drill.ts';
import { words } from '../words/words.ts';

/** What 1 and 2 strike, where they strike different things: whose lob it was, and whose overhead. */
export function RolesLine({ terms }: { terms: Pick<Terms, 'shots'> }) {
  if (!rolesDiffer(terms)) return null;
  const t = words.value.court;
  const roles = ([0, 1] as const).map((role) => {
    const strokes = terms.shots.filter((shot) => shot.role === role).map(({ stroke }) => stroke);
    return `${role + 1} ${words.value.list([...new Set(strokes)].map((each) => t.strikes[each]))}`;
  });
  return <p class="small roles-line">{roles.join(' · ')}</p>;
}
