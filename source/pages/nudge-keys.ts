import type {Nudge} from '../workbench.js';

/** The keys of the hand in practice, the same on every face; arrows stand for the large ones where there are any. */
export const nudgeKeys: Readonly<Record<string, Nudge>> = {
	'<': {way: 'in', size: 'large'},
	'>': {way: 'out', size: 'large'},
	',': {way: 'in', size: 'fine'},
	'.': {way: 'out', size: 'fine'},
};
