import type { Pace } from '../round/tempo.ts';
import {
  joined,
  type Lognormal,
  MEASURED_TEMPO_SD,
  type TouchesPriors,
  USUAL_REFEED,
  USUAL_TEMPO,
} from './touches-round.ts';

/** Sd of the log of a re-feed measured as the mean of five: one has a coefficient of variation of 0.4. */
const MEASURED_REFEED_SD = 0.18;

/**
 * What the model of touches takes for a drill's clock: the usual values, drawn towards what was
 * measured. `players` takes the hits of one player out of so many who strike in turn.
 */
export function paceKnown(
  pace: Pace | undefined,
  players = 1,
): { tempo?: number; priors: TouchesPriors } {
  const { tempo, refeed } = pace ?? {};
  const [usual, sdLog] = USUAL_TEMPO;
  return {
    ...(tempo !== undefined && { tempo: players * tempo }),
    priors: { tempo: [players * usual, sdLog], refeed: refeedKnown(refeed) },
  };
}

const refeedKnown = (measured: number | undefined): Lognormal =>
  measured === undefined ? USUAL_REFEED : joined(USUAL_REFEED, measured, MEASURED_REFEED_SD);

/** The same in single values, where only what is likeliest counts. */
export function paceMedians({ tempo, refeed }: Pace = {}): Required<Pace> {
  const [hit] = tempo === undefined ? USUAL_TEMPO : joined(USUAL_TEMPO, tempo, MEASURED_TEMPO_SD);
  const [miss] = refeedKnown(refeed);
  return { tempo: hit, refeed: miss };
}
