/**
 * One table of units: everything the program reads or prints in a unit goes through here.
 * Inside the program: mm, mN, degrees, °C, percent of tracking force, µm/mN, grams of mass.
 */
import constants from '../shared/constants.json' with {type: 'json'};

type Unit = {
	/** What stands behind the number on screen. */
	readonly label: string;
	/** The quantity that it measures. */
	readonly of: string;
	/** Base unit = entered × scale + offset. */
	readonly scale: number;
	readonly offset?: number;
	/** Decimals on screen. */
	readonly decimals: number;
	/** Other spellings that are understood, lower case, in all languages of the program. */
	readonly also: readonly string[];
};

const gravity = constants.standardGravity.value;

export const units = {
	mm: {
		label: 'mm',
		of: 'length',
		scale: 1,
		decimals: 1,
		also: ['millimetre', 'millimetres', 'millimeter', 'millimeters'],
	},
	cm: {label: 'cm', of: 'length', scale: 10, decimals: 2, also: ['centimetre', 'centimetres', 'zentimeter']},
	in: {label: 'in', of: 'length', scale: constants.inch.value, decimals: 3, also: ['inch', 'inches', 'zoll', '"', '″']},
	mN: {label: 'mN', of: 'force', scale: 1, decimals: 2, also: ['mn', 'millinewton', 'millinewtons']},
	gf: {label: 'g', of: 'force', scale: gravity, decimals: 3, also: ['g', 'gr', 'gram', 'grams', 'gramm', 'p', 'pond']},
	g: {label: 'g', of: 'mass', scale: 1, decimals: 2, also: ['gr', 'gram', 'grams', 'gramm']},
	mg: {label: 'mg', of: 'mass', scale: 0.001, decimals: 0, also: ['milligram', 'milligrams', 'milligramm']},
	deg: {label: '°', of: 'angle', scale: 1, decimals: 2, also: ['°', 'degree', 'degrees', 'grad', 'º']},
	arcmin: {label: '′', of: 'angle', scale: 1 / 60, decimals: 1, also: ["'", '′', 'min', 'arcminutes', 'bogenminuten']},
	mmPerM: {label: 'mm/m', of: 'angle', scale: constants.degreePerMmPerM.value, decimals: 2, also: ['mm/m', 'mm per m']},
	celsius: {label: '°C', of: 'temperature', scale: 1, decimals: 1, also: ['°c', 'c', 'º c', 'ºc']},
	fahrenheit: {label: '°F', of: 'temperature', scale: 5 / 9, offset: -160 / 9, decimals: 0, also: ['°f', 'f', 'ºf']},
	percent: {label: '%', of: 'percent', scale: 1, decimals: 2, also: ['%', 'pct', 'percent', 'prozent']},
	umPerMn: {
		label: 'µm/mN',
		of: 'compliance',
		scale: 1,
		decimals: 1,
		also: ['um/mn', 'mm/n', 'e-6 cm/dyn', '×10⁻⁶ cm/dyn'],
	},
	// A part of the tracking force has no sign behind it; `words/` names it. Earlier versions kept it with its name.
	ofForce: {label: '', of: 'ratio', scale: 1, decimals: 2, also: ['of tracking force']},
	s: {label: 's', of: 'time', scale: 1, decimals: 0, also: ['sec', 'second', 'seconds', 'sekunde', 'sekunden']},
} as const satisfies Record<string, Unit>;

export type UnitId = keyof typeof units;
export type Quantity = (typeof units)[UnitId]['of'];

/** The units a gauge may show, by the names that stored documents use. */
export const gaugeUnits = ['percent', 'mN', 'gf'] as const satisfies readonly UnitId[];
export type GaugeUnit = (typeof gaugeUnits)[number];

export const unitIds = Object.keys(units) as UnitId[];

/** The unit of a quantity that is spelled so, or undefined. Case does not matter. */
export function findUnit(spelled: string, quantity: Quantity): UnitId | undefined {
	const wanted = folded(spelled);
	return unitIds.find((id) => {
		const unit: Unit = units[id];
		return unit.of === quantity && [id, unit.label, ...unit.also].some((name) => folded(name) === wanted);
	});
}

// A plain keyboard has neither the cross nor raised digits: 'x10^-6' is '×10⁻⁶'.
const folded = (name: string): string =>
	name
		.normalize('NFKC')
		.replace(/\s/g, '')
		.replaceAll('\u2212', '-')
		.replace(/^[x×·⋅*]10\^?-/i, '×10-')
		.toLowerCase();

/** Labels of all units of a quantity, for a refusal that says what is wanted. */
export const labelsOf = (quantity: Quantity): string[] =>
	unitIds.filter((id) => units[id].of === quantity).map((id) => units[id].label);

export function toBase(entered: number, id: UnitId): number {
	const unit: Unit = units[id];
	return entered * unit.scale + (unit.offset ?? 0);
}

export function fromBase(value: number, id: UnitId): number {
	const unit: Unit = units[id];
	return (value - (unit.offset ?? 0)) / unit.scale;
}

/** Gram-force in millinewtons. */
export const grams = (force: number): number => toBase(force, 'gf');

/** A base value printed in a unit: `formatIn(17.652, 'gf')` is `1.8 g`. Trailing zeros go; a minus sign is a hyphen. */
export function formatIn(value: number, id: UnitId, decimals: number = units[id].decimals): string {
	const whole = fixed(fromBase(value, id), decimals);
	const text = whole.includes('.') ? whole.replace(/\.?0+$/, '') : whole;
	const {label} = units[id];
	return label === '°' || label === '′' ? `${text}${label}` : `${text} ${label}`;
}

/** A number with so many decimals, and no minus before a zero. */
export const fixed = (value: number, decimals: number): string =>
	value.toFixed(decimals).replace(/^-(?=0(?:\.0*)?$)/, '');

/** Decimals at which a value no longer prints like the limit that it misses: '2.00 %' beside '2 %' explains nothing. */
export function decimalsApart(value: number, limit: number, decimals: number): number {
	for (let more = decimals; more < 6; more++) if (Number(fixed(value, more)) !== limit) return more;
	return 6;
}
