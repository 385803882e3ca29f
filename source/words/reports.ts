import {reports} from '#language/reports/index';

/** What the reports say: apart from the other words, so that the first screen need not wait for it. */
export const reportWords = reports;
