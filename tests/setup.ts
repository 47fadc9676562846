import fc from 'fast-check';

/*
 * The same cases at every run, so that a run that was green stays green; SEED=$RANDOM looks at
 * others. A counterexample prints its own seed.
 */
fc.configureGlobal({ seed: Number(process.env.SEED ?? 20_261_125) });

// Dates and numbers follow the country of whoever reads: here there is none, whoever runs the tests.
if (globalThis.navigator) Object.defineProperty(navigator, 'languages', { value: [] });
