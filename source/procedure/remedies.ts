import type {Facts} from './facts.js';

export type Remedy = {
	readonly id: string;
	readonly label: string;
	/** Steps that are asked again before the new series. */
	readonly steps: readonly string[];
	readonly when?: (facts: Facts) => boolean;
};

/** What can be tried at the bench at once; each closes the series and opens a new one. */
export const remedies: readonly Remedy[] = [
	{id: 'level', label: 'level the armboard', steps: ['level-lr-1', 'level-lr-2', 'level-fb-1', 'level-fb-2']},
	{id: 'leads', label: 'dress the leads anew', steps: ['wires']},
	{
		id: 'bias',
		label: 'look at the bias device again',
		steps: ['bias-off'],
		when: (facts) => facts.answered('bias-off'),
	},
	{
		id: 'damping',
		label: 'look at the damping again',
		steps: ['damping-off'],
		when: (facts) => facts.answered('damping-off'),
	},
	{
		id: 'zero',
		label: 'check the zero of the gauge again',
		steps: ['zero-way', 'zero-first-inner', 'zero-first-outer', 'zero-turned-inner', 'zero-turned-outer'],
	},
	{
		id: 'force',
		label: 'set and weigh the tracking force again',
		steps: ['guard-on', 'weighed', 'force-reading', 'force-at-height'],
	},
	{id: 'height', label: 'set the height anew', steps: ['clearance']},
	{id: 'again', label: 'touch nothing, only probe again', steps: []},
];
