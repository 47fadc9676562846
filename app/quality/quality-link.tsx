import { href } from '../route.ts';
import { qualityWords } from '../words/quality-words.ts';

/** The way from the review to quality beside quantity, of the squad or of one player. */
export function QualityLink({ player }: { player: string | undefined }) {
  return (
    <a class="button" href={player === undefined ? href('quality') : href('quality', player)}>
      {qualityWords.value.open}
    </a>
  );
}
