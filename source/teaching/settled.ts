import {usualSettings} from '../procedure/settings.js';

/** An arm that has not moved for so long has settled: the usual settle countdown. */
export const settledMs = 1000 * usualSettings.settleSeconds;
