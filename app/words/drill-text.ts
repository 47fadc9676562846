import type { Drill, DrillText, Terms } from '../../core/drill/drill.ts';
import { words } from './words.ts';

type Setup = DrillText & { setup?: string };

/** What people read of a drill: the coach's own words, or those that the language brings. */
export function textOf(drill: Drill): Setup {
  const starter: Record<string, Setup> = words.value.drills;
  return (
    drill.text ?? starter[drill.id] ?? { name: drill.id, intention: '', cue: '', roles: ['', ''] }
  );
}

/** The name of a drill as a round kept it. */
export function drillName(terms: Pick<Terms, 'drill' | 'name'>): string {
  const starter: Record<string, Setup> = words.value.drills;
  return terms.name ?? starter[terms.drill]?.name ?? terms.drill;
}

/** Both roles with their names in one line; undefined where the coach gave none. */
export function rolesLine({ roles }: Pick<DrillText, 'roles'>): string | undefined {
  if (roles.every((role) => role.trim() === '')) return undefined;
  return roles.map((role, number) => words.value.drill.role(number, role)).join(' · ');
}
