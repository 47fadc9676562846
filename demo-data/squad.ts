import type { Family } from '../core/drill/drill.ts';
import type { Hand } from '../core/ledger/squad.ts';

/** Someone who does not exist, and what nobody could know of a real player. */
export interface Invented {
  name: string;
  level?: number;
  hand?: Hand;
  /** What the season adds to the logit of a good shot: 0 stays flat, 1 is easily seen. */
  gain: number;
  /** What this player's balls add to the partner's next shot, on the same scale. */
  help: number;
  /** 0 comes seldom, 1 whenever there is practice. */
  keen: number;
  /** Where this player stands out for better or worse, on the same scale. */
  bent?: Partial<Record<Family, number>>;
}

export interface Member extends Invented {
  id: string;
}

/**
 * Twenty-four invented players; a squad takes the first of them. Pip clearly improves, Moss stays
 * flat, with Juno everyone plays better, and Biscuit's balls are hard to answer.
 */
export const invented: readonly Invented[] = [
  { name: 'Pip', level: 3, hand: 'right', gain: 2.6, help: 0, keen: 0.95 },
  { name: 'Moss', level: 6, hand: 'right', gain: 0, help: 0, keen: 0.9, bent: { volleys: 0.3 } },
  { name: 'Juno', level: 6, hand: 'left', gain: 0.1, help: 0.6, keen: 0.95 },
  { name: 'Tariku', level: 7, hand: 'right', gain: 0.15, help: 0.1, keen: 0.85 },
  { name: 'Biscuit', level: 7, hand: 'right', gain: 0.1, help: -0.4, keen: 0.9 },
  { name: 'Noor', level: 5, hand: 'right', gain: 0.2, help: 0, keen: 0.9 },
  { name: 'Wren', level: 4, hand: 'left', gain: 0.25, help: 0, keen: 0.8 },
  { name: 'Zuzu', level: 8, gain: 0.05, help: 0.1, keen: 0.9, bent: { 'serves-and-returns': 0.4 } },
  { name: 'Ibo', level: 5, hand: 'right', gain: 0.1, help: -0.1, keen: 0.7 },
  { name: 'Lark', hand: 'right', gain: 0.15, help: 0.1, keen: 0.85 },
  { name: 'Kofi', level: 6, hand: 'right', gain: 0.1, help: 0, keen: 0.9 },
  { name: 'Mochi', level: 4, hand: 'right', gain: 0.2, help: 0, keen: 0.85 },
  { name: 'Fenn', level: 7, hand: 'right', gain: 0.05, help: 0, keen: 0.9 },
  { name: 'Salma', level: 6, hand: 'left', gain: 0.15, help: 0.1, keen: 0.9 },
  { name: 'Dax', level: 5, hand: 'right', gain: -0.05, help: 0, keen: 0.8 },
  { name: 'Anouk', level: 8, hand: 'right', gain: 0.1, help: 0, keen: 0.9 },
  { name: 'Jip', gain: 0.15, help: -0.1, keen: 0.75 },
  { name: 'Ravi', level: 5, hand: 'right', gain: 0.1, help: 0.2, keen: 0.9 },
  { name: 'Kestrel', level: 6, hand: 'left', gain: 0.05, help: 0, keen: 0.85 },
  { name: 'Nilo', level: 4, hand: 'right', gain: 0.3, help: 0, keen: 0.9 },
  { name: 'Oona', level: 7, hand: 'right', gain: 0.1, help: 0, keen: 0.85 },
  { name: 'Sparrow', level: 5, hand: 'right', gain: 0.15, help: 0, keen: 0.9 },
  { name: 'Amaru', level: 6, gain: 0.1, help: -0.2, keen: 0.8 },
  { name: 'Tilly', level: 5, hand: 'right', gain: 0.1, help: 0.1, keen: 0.9 },
];
