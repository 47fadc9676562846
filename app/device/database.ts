import { prefs } from './prefs.ts';

/** The invented ledger's own database: the coach's is never written to. */
export const DEMO_DATABASE = 'rally-ledger-demo';

/** The database that this page shows: the coach's own ledger and the invented one never share one. */
export const database = prefs.value.demo ? DEMO_DATABASE : 'rally-ledger';
