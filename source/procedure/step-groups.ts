/** Steps that are asked anew together. */
export const levelSteps = ['level-lr-1', 'level-lr-2', 'level-fb-1', 'level-fb-2'] as const;
export const zeroSteps = [
	'zero-way',
	'zero-first-inner',
	'zero-first-outer',
	'zero-turned-inner',
	'zero-turned-outer',
] as const;
export const guardSteps = ['guard-on', 'weighed'] as const;
export const forceSteps = ['force-reading', 'force-at-height'] as const;

/** For how many minutes a reading of a deck holds that stands untouched: one sitting, not overnight. */
export const halfADay = 12 * 60;
