/** The reports. */
export const reports = {};
