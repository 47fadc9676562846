import type { Plan } from './block.ts';
import type { Drill } from './drill.ts';
import type { Entry } from './entry.ts';
import { starterDrills } from './starter-drills.ts';

/** A block that the coach kept by name. */
export interface KeptBlock {
  id: string;
  name: string;
  plan: Plan;
}

export interface Library {
  /** The starter drills and the coach's own; one written anew stands in the old one's place. */
  drills: Map<string, Drill>;
  blocks: Map<string, KeptBlock>;
}

/** The drills and kept blocks that the coach can choose from, of entries sorted by id. */
export function foldLibrary(entries: Iterable<Entry>): Library {
  const drills = new Map(starterDrills.map((drill) => [drill.id, drill]));
  const blocks = new Map<string, KeptBlock>();
  for (const entry of entries) {
    switch (entry.kind) {
      case 'drill-written':
        drills.set(entry.drill.id, entry.drill);
        break;
      case 'drill-dropped':
        drills.delete(entry.drill);
        break;
      case 'block-kept':
        blocks.set(entry.block, { id: entry.block, name: entry.name, plan: entry.plan });
        break;
      case 'block-dropped':
        blocks.delete(entry.block);
        break;
    }
  }
  return { drills, blocks };
}
