/*
 * The whole app, as a phone opens it, and beside it the parts that a test speaks to. It is built
 * into one script (see built.ts), and a page is one run of that script.
 */
export * as actions from '../../../app/actions.ts';
export * as comingRound from '../../../app/coming-round.ts';
export * as sides from '../../../app/court/sides.ts';
export * as clock from '../../../app/device/clock.ts';
export * as prefs from '../../../app/device/prefs.ts';
export * as windows from '../../../app/device/windows.ts';
export * as estimates from '../../../app/estimates.ts';
export * as ledger from '../../../app/ledger.ts';
export * as practices from '../../../app/practices.ts';
export * as route from '../../../app/route.ts';
export * as squad from '../../../app/squad/actions.ts';
export * as tempo from '../../../app/tempo/actions.ts';
export * as deskWords from '../../../app/words/desk-words.ts';
export * as drillText from '../../../app/words/drill-text.ts';
export * as figureWords from '../../../app/words/figure-words.ts';
export * as planningWords from '../../../app/words/planning-words.ts';
export * as words from '../../../app/words/words.ts';

import '../../../app/main.tsx';
