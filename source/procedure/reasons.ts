/** Why a round may be struck out. */
export const strikeReasons = ['bumped', 'not-settled', 'misread', 'draught'] as const;

/** Why someone may go on although a step does not pass. */
export const overrideReasons = [
	'cannot-level',
	'spring-loaded',
	'level-cannot-turn',
	'known-what-moved',
	'time-short',
	'someone-else',
	'cannot-do-here',
	'owner-wants-force',
	'no-scale',
	'maker-wants-power',
	'licensed-person',
	'mat-must-stay',
	'no-guard',
	'trough-full',
	'damper-built-in',
	'bias-stays',
	'maker-forbids-unhooking',
	'part-of-fault',
	'cannot-change-here',
	'guard-only',
	'no-range',
	'gauge-height-fixed',
	'arm-touches-elsewhere',
] as const;

export type OverrideReason = (typeof overrideReasons)[number];
export type ReasonId = OverrideReason | (typeof strikeReasons)[number];

export const isReasonId = (id: string): id is ReasonId =>
	[...overrideReasons, ...strikeReasons].some((one) => one === id);
