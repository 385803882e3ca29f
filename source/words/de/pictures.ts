import {plainNumber} from '../numbers.js';

/** What stands in pictures, on a screen and in a report. */
export const pictures = {
	rim: 'außen, Rand',
	spindle: 'innen, Tellerachse',
	ofForce: '% der Kraft',
	plusTowardRim: '%, + zum Rand',
	goodTo: ({pct}: {pct: number}) => `gut bis ${plainNumber(pct)} %`,
	usableTo: ({pct}: {pct: number}) => `brauchbar bis ${plainNumber(pct)} %`,
	bands: {
		band: 'Reibung',
		pull: 'Zug',
		pullWithUncertainty: 'Zug und sein ± (95 %)',
		earlier: 'früher',
		goodTo: ({pct}: {pct: number}) => `gut bis ${plainNumber(pct)} % Zug`,
		usableTo: ({pct}: {pct: number}) => `brauchbar bis ${plainNumber(pct)} % Zug`,
	},
	curve: {
		/** Names of what is drawn: whole, and where there is less and least room. */
		marks: {
			wanted: {whole: 'Sollwert', brief: 'Soll', least: 'Soll'},
			band: {whole: 'bei 0,05 mehr oder weniger Rillenreibung', brief: 'Rille ±', least: 'Rille±'},
			own: {whole: 'gemessen, Antiskating aus', brief: 'Antiskating aus', least: 'aus'},
			measured: {whole: 'gemessen, Antiskating an', brief: 'Antiskating an', least: 'an'},
			leftOver: {whole: 'Rest', brief: 'Rest', least: 'Rest'},
		},
		up: 'oben: zum Rand',
		inside: 'innen auf der Platte',
		outside: 'außen',
		radius: 'Radius in mm',
		least: 'Min.',
		leastAt: ({radiusMm}: {radiusMm: number}) => `Minimum ${Math.round(radiusMm)}`,
	},
	history: {
		heading: ({label, count}: {label: string; count: number}) => `${label} (${count} Prüfungen)`,
	},
	lever: {
		heading: 'Hebel bei',
		/** In columns, for letters of one width. */
		row: ({letter, radius, time}: {letter: string; radius: string; time: string}) => `${letter} ${radius} mm ${time}`,
		item: ({letter, radius, time}: {letter: string; radius: string; time: string}) =>
			`${letter}   ${radius} mm: ${time}`,
	},
	gauge: {turned: '(gedreht)'},
	plan: {back: 'hinten', front: 'vorn: hier stehen'},
};
