/** What a line of the put-back list undoes: it is asked by name before the probe goes on. */
export const undoneBy: Readonly<Record<string, readonly string[]>> = {
	'back-mat': ['mat', 'mat-thickness'],
	'back-damping': ['damping-off'],
	'back-bias': ['bias-off'],
	'back-height': ['clearance'],
	'back-guard': ['guard-on', 'weighed'],
};
