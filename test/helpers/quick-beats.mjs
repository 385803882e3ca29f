// Loaded before the program: what beats at intervals beats sixteen times as fast. The invented bench counts its beats, not
// the clock, so its five seconds are over in a fraction of one.
const trueInterval = globalThis.setInterval;
globalThis.setInterval = (work, ms, ...rest) => trueInterval(work, ms / 16, ...rest);
