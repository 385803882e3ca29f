import type {Place} from '../../procedure/step.js';
import type {PlaceName} from '../../results/document-schema.js';

/** A place of the probe as it is called on screen. */
export const places: Readonly<Record<Place | PlaceName, string>> = {
	inner: 'inner',
	outer: 'outer',
	extra: 'third',
	other: 'third',
	closing: 'closing',
	'bias-outer': 'bias on, outer',
	'bias-middle': 'bias on, middle',
	'bias-inner': 'bias on, inner',
};
