/** Where the pivot stands, seen from the spindle by someone in front of the deck; degrees anticlockwise from 'right', from above. */
export const pivotPlaces = [
	{id: 'right-rear', label: 'right rear (the usual place)', degrees: 45},
	{id: 'right', label: 'right', degrees: 0},
	{id: 'rear', label: 'straight behind', degrees: 90},
	{id: 'left-rear', label: 'left rear', degrees: 135},
	{id: 'left', label: 'left', degrees: 180},
	{id: 'left-front', label: 'left front', degrees: 225},
	{id: 'front', label: 'straight in front', degrees: 270},
	{id: 'right-front', label: 'right front', degrees: 315},
] as const;
