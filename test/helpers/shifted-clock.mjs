// Loaded before the program: its clock is behind by CLOCK_BEHIND_MINUTES, as if it had been started that long ago.
const TrueDate = Date;
const behindMs = Number(process.env.CLOCK_BEHIND_MINUTES ?? 0) * 60_000;

globalThis.Date = class extends TrueDate {
	constructor(...parts) {
		if (parts.length === 0) super(TrueDate.now() - behindMs);
		else super(...parts);
	}
	static now() {
		return TrueDate.now() - behindMs;
	}
};
