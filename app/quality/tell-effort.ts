import type { Effort, Practice } from '../../core/ledger/practice.ts';
import { append } from '../ledger.ts';

/** Says anew what is known of a player's effort and minutes: what is left out is open again. */
export function tellEffort({ id }: Pick<Practice, 'id'>, player: string, told: Effort): void {
  append({ kind: 'effort-told', practice: id, player, ...told });
}

/** The effort or the minutes of what was told, changed; undefined takes them back. */
export function withTold(
  told: Effort | undefined,
  field: keyof Effort,
  value: number | undefined,
): Effort {
  const { [field]: _, ...rest } = told ?? {};
  return value === undefined ? rest : { ...rest, [field]: value };
}
