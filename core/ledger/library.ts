import type { Drill } from '../drill/drill.ts';
import type { Focus } from '../drill/focus.ts';
import { starterDrills } from '../drill/starter-drills.ts';
import type { Plan } from '../round/block.ts';
import type { Entry } from './entry.ts';

/** A block that the coach kept by name. */
export interface SavedBlock {
  id: string;
  name: string;
  plan: Plan;
}

export interface Library {
  /**
   * The starter drills and the coach's own; one written anew stands in the old one's place. A
   * dropped one is gone; of a starter drill the coach's version is, and the original is back.
   */
  drills: Map<string, Drill>;
  /** Drills that the coach has switched off: they stay in the library and are not proposed. */
  off: Set<string>;
  /** Drills whose sets the pairs call at the horn; those of all others are tapped as they happen. */
  called: Set<string>;
  /** The coach's own foci by their ids, also those that were dropped: older looks name them. */
  foci: Map<string, Focus & { dropped?: true }>;
  /** What is looked at in the rounds of a drill, where that was chosen. */
  focusOf: Map<string, string>;
  /** Kept blocks, without the steps whose drill is gone. */
  blocks: Map<string, SavedBlock>;
}

const starters = new Map(starterDrills.map((drill) => [drill.id, drill]));

/** Whether a drill came with the program, the coach's own version of it included. */
export const isStarter = (drill: string): boolean => starters.has(drill);

/** The drills that may be proposed, in the library's order: each until it is switched off. */
export const drillsOn = ({ drills, off }: Library): Drill[] =>
  [...drills.values()].filter((drill) => !off.has(drill.id));

/** The drills and kept blocks that the coach can choose from, of entries sorted by id. */
export function foldLibrary(entries: Iterable<Entry>): Library {
  const drills = new Map(starters);
  const off = new Set<string>();
  const called = new Set<string>();
  const blocks = new Map<string, SavedBlock>();
  const foci: Library['foci'] = new Map();
  const focusOf: Library['focusOf'] = new Map();
  for (const entry of entries) {
    switch (entry.kind) {
      case 'drill-written':
        drills.set(entry.drill.id, entry.drill);
        break;
      case 'drill-dropped': {
        const original = starters.get(entry.drill);
        if (original) drills.set(entry.drill, original);
        else drills.delete(entry.drill);
        break;
      }
      case 'drill-switched':
        if (entry.on) off.delete(entry.drill);
        else off.add(entry.drill);
        break;
      case 'drill-counted':
        if (entry.way === 'called') called.add(entry.drill);
        else called.delete(entry.drill);
        break;
      case 'focus-written':
        foci.set(entry.focus.id, entry.focus);
        break;
      case 'focus-dropped': {
        const focus = foci.get(entry.focus);
        if (focus) foci.set(entry.focus, { ...focus, dropped: true });
        break;
      }
      case 'drill-focused':
        if (entry.focus === undefined) focusOf.delete(entry.drill);
        else focusOf.set(entry.drill, entry.focus);
        break;
      case 'block-kept':
        blocks.set(entry.block, { id: entry.block, name: entry.name, plan: entry.plan });
        break;
      case 'block-dropped':
        blocks.delete(entry.block);
        break;
    }
  }
  for (const [id, block] of blocks) {
    const steps = block.plan.steps.filter((step) => drills.has(step.drill));
    blocks.set(id, { ...block, plan: { ...block.plan, steps } });
  }
  return { drills, off, called, foci, focusOf, blocks };
}
