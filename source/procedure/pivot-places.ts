import type {OptionOf} from './step-ids.js';

/** Where the pivot stands, seen from the spindle by someone in front of the deck; degrees anticlockwise from 'right', from above. */
export const pivotPlaces = [
	{id: 'right-rear', degrees: 45},
	{id: 'right', degrees: 0},
	{id: 'rear', degrees: 90},
	{id: 'left-rear', degrees: 135},
	{id: 'left', degrees: 180},
	{id: 'left-front', degrees: 225},
	{id: 'front', degrees: 270},
	{id: 'right-front', degrees: 315},
] as const satisfies readonly {readonly id: OptionOf<'arm-pivot-place'>; readonly degrees: number}[];
