import { initials } from '../../core/exchange/initials.ts';
import type { Naming } from '../../core/exchange/tallies.ts';
import { prefs } from '../device/prefs.ts';
import { squad } from '../ledger.ts';
import { drillName } from '../words/drill-text.ts';
import { focusQuestion } from '../words/focus-question.ts';
import { playerName } from './names.ts';

/** What everything is called in a table that leaves the phone: players by initials where that is set. */
export function namingOut(): Naming {
  const short = initials(new Map([...squad.value].map(([id, player]) => [id, player.name])));
  return {
    player: (id) => (prefs.value.initials && short.get(id)) || playerName(id),
    drill: drillName,
    focus: focusQuestion,
  };
}
