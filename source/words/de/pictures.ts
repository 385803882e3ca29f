import {plainNumber} from '../numbers.js';

/** What stands in pictures, on a screen and in a report. */
export const pictures = {
	rim: 'out, rim',
	spindle: 'in, spindle',
	ofForce: '% of force',
	plusTowardRim: '%, + toward the rim',
	goodTo: ({pct}: {pct: number}) => `good to ${plainNumber(pct)} %`,
	usableTo: ({pct}: {pct: number}) => `usable to ${plainNumber(pct)} %`,
	bands: {
		band: 'friction',
		pull: 'pull',
		pullWithUncertainty: 'pull and its ± (95 %)',
		earlier: 'earlier',
		goodTo: ({pct}: {pct: number}) => `good to ${plainNumber(pct)} % of pull`,
		usableTo: ({pct}: {pct: number}) => `usable to ${plainNumber(pct)} % of pull`,
	},
	curve: {
		/** Names of what is drawn: whole, and where there is less and least room. */
		marks: {
			wanted: {whole: 'wanted reading', brief: 'wanted', least: 'wanted'},
			band: {whole: 'if the drag is 0.05 more or less', brief: 'drag ±', least: 'drag±'},
			own: {whole: 'read with bias off', brief: 'bias off', least: 'off'},
			measured: {whole: 'read with bias on', brief: 'bias on', least: 'on'},
			leftOver: {whole: 'left over', brief: 'left over', least: 'left'},
		},
		up: 'up is toward the rim',
		inside: 'inside of the record',
		outside: 'outside',
		radius: 'radius in mm',
		least: 'least',
		leastAt: ({radiusMm}: {radiusMm: number}) => `least at ${Math.round(radiusMm)}`,
	},
	history: {
		heading: ({label, count}: {label: string; count: number}) => `${label} (${count} checks)`,
	},
	lever: {
		heading: 'Lever at',
		/** In columns, for letters of one width. */
		row: ({letter, radius, time}: {letter: string; radius: string; time: string}) => `${letter} ${radius} mm ${time}`,
		item: ({letter, radius, time}: {letter: string; radius: string; time: string}) =>
			`${letter}   ${radius} mm: ${time}`,
	},
	gauge: {turned: '(turned)'},
	plan: {back: 'back', front: 'front: you stand here'},
};
