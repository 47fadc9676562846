import { signsAhead } from '../../core/round/signs.ts';
import { type Given, give, takeBack } from './timbres.ts';

/** Seconds by which a sign may be off before it is put right; an ear hears nothing below it. */
const TOLERANCE = 0.005;
/** Seconds from which the signs have not slipped, but belong to a clock that was changed. */
const ANOTHER = 0.5;

/**
 * The signs of a round on an audio clock. That clock goes by itself, so that a busy or throttled
 * page cannot make a sign late; but it stands while the phone takes the sound away, and it runs a
 * little fast or slow. So whoever follows a round holds the two against each other time and again,
 * and signs that came out of step are put in step.
 */
export class SignTrack {
  /** Second of the audio clock at which the horn goes. */
  #horn: number | undefined;
  #given: Given[] = [];

  /** @param out where the signs go: the way to the loudspeaker */
  constructor(
    readonly audio: BaseAudioContext,
    readonly out: AudioNode,
  ) {}

  /**
   * Sees to it that all signs still to come fall when they should.
   *
   * @param left seconds left on the round's clock, 0 for ever after the horn
   * @param at second of the audio clock that is heard at that very moment
   * @param turn seconds left on the round's clock as roles turn; left out where they do not
   */
  keepTo(left: number, at: number, turn?: number): void {
    const slip = at + left - (this.#horn ?? Number.NEGATIVE_INFINITY);
    if (left === 0) {
      // What would still sound now is far too late to be true.
      if (slip < -ANOTHER) this.hush();
    } else if (Math.abs(slip) >= ANOTHER) {
      this.hush();
      this.#horn = at + left;
      this.#given = signsAhead(left, turn).map(({ in: wait, sign }) =>
        give(this.audio, this.out, sign, at + wait),
      );
    } else if (Math.abs(slip) > TOLERANCE) {
      this.#horn = at + left;
      this.#given = this.#given.map((given) => this.#move(given, slip));
    }
  }

  /** Takes back every sign that has not begun; one that sounds may end. */
  hush(): void {
    for (const given of this.#given) takeBack(this.audio, given);
    this.#given = [];
    this.#horn = undefined;
  }

  /** A sign that has not begun goes to where it belongs; none is lost and none is given twice. */
  #move(given: Given, by: number): Given {
    if (given.at <= this.audio.currentTime) return given;
    takeBack(this.audio, given);
    return give(this.audio, this.out, given.call, given.at + by);
  }
}
