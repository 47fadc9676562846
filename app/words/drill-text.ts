import type { Drill, DrillText, Terms } from '../../core/drill/drill.ts';
import { words } from './words.ts';

/** What is said of a drill wherever it comes up; how it is run stands in drill-instructions.ts. */
export type DrillHead = Pick<DrillText, 'name' | 'intention' | 'cue'>;

/** The name, intention and cue of a drill: the coach's own, or those that the language brings. */
export function textOf(drill: Drill): DrillHead {
  const starter: Record<string, DrillHead> = words.value.drills;
  return drill.text ?? starter[drill.id] ?? { name: drill.id, intention: '', cue: '' };
}

/** The name of a drill as a round kept it. */
export function drillName(terms: Pick<Terms, 'drill' | 'name'>): string {
  const starter: Record<string, DrillHead> = words.value.drills;
  return terms.name ?? starter[terms.drill]?.name ?? terms.drill;
}
