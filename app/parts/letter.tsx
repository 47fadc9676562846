import './letter.css';

/** A pair's letter on its pattern: the same over the whole practice, told apart without colour. */
export function Letter({ letter }: { letter: string }) {
  return (
    <span class="letter" data-pattern={letter}>
      <b>{letter}</b>
    </span>
  );
}
