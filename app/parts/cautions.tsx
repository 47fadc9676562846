import type { Terms } from '../../core/drill/drill.ts';
import { words } from '../words/words.ts';
import './cautions.css';

/** What a block begins with: short, and where it is read. */
export function BlockCautions() {
  const t = words.value.cautions;
  return (
    <section class="cautions" aria-label={t.title}>
      <h2>{t.title}</h2>
      <ul>
        {t.block.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </section>
  );
}

/** What overheads and serves need in particular; nothing at other drills. */
export function DrillCautions({ shots }: { shots: Terms['shots'] }) {
  const t = words.value.cautions;
  const own = (['overhead', 'serve'] as const).filter((stroke) =>
    shots.some((shot) => shot.stroke === stroke),
  );
  return own.map((stroke) => (
    <p key={stroke} class="caution">
      {t[stroke]}
    </p>
  ));
}
