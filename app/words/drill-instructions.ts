import type { Drill, DrillText } from '../../core/drill/drill.ts';
import { cardWords } from './card-words.ts';
import { textOf } from './drill-text.ts';
import { words } from './words.ts';

/** How a drill is run, for somebody who never saw it; what is left out or empty is not said. */
export type Instructions = Omit<DrillText, 'name' | 'intention' | 'cue'> & {
  /** Where the markers lie, in metres on the full court. */
  setup?: string;
};

/** What every language brings for a starter drill. */
export type StarterInstructions = {
  [Part in keyof Instructions]-?: NonNullable<Instructions[Part]>;
};

/** How a drill is run: in the coach's own words, or in those that the language brings. */
export function instructionsOf(drill: Drill): Instructions {
  const starter: Record<string, StarterInstructions> = cardWords.value.instructions;
  return drill.text ?? starter[drill.id] ?? { roles: ['', ''] };
}

/** All that a coach can write of a drill, as people read it now. */
export function wholeTextOf(drill: Drill): DrillText {
  const { setup: _, ...instructions } = instructionsOf(drill);
  return { ...textOf(drill), ...instructions };
}

/**
 * What the roles are there for, a line each, and one line where it is the same: what each does, else
 * what it is called. Empty where nothing was written.
 */
export function rolesLines({ tasks, roles }: Pick<DrillText, 'tasks' | 'roles'>): string[] {
  const { named } = words.value;
  const t = cardWords.value;
  const said = roles.map((role, number) => tasks?.[number]?.trim() || role.trim());
  const [first = '', second] = said;
  if (first !== '' && first === second) return [named(t.both, first)];
  return said.flatMap((task, number) =>
    task === '' ? [] : [named(words.value.number(number + 1), task)],
  );
}
