/** The pages beside a check: home, past checks, profiles, settings, practice lobby. */
export const beside = {};
