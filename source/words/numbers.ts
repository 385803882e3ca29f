/**
 * The one door through which numbers, signs, units, ± and lists are printed for a person, as `Intl` has them for the
 * language in use.
 */

import {locale} from '#language/locale';
import {fromBase, type UnitId, units} from '../units.js';

type Sign = 'negative' | 'exceptZero';

/**
 * Rounded by `toFixed`, which rounds what the number is in binary: Intl would round its shortest decimal, so that 1.005
 * would print as 1.01 here and as 1.00 in a document of figures. The rest is as Intl has it.
 */
function write(value: number, least: number, most: number, sign: Sign = 'negative'): string {
	const fixed = Number.isInteger(value) && least === 0 ? String(value) : value.toFixed(most);
	const isNegative = fixed.startsWith('-');
	const digits = isNegative ? fixed.slice(1) : fixed;
	const size = withMark(most > least ? shortened(digits, least) : digits);
	if ((!isNegative && sign === 'negative') || Number(fixed) === 0) return size;
	return `${isNegative ? '-' : '+'}${size}`;
}

const withMark = (digits: string): string => digits.replace('.', locale.decimalMark);

/** Without the zeros at its end, but for as many decimals as it must have. */
function shortened(digits: string, least: number): string {
	const [whole = '', decimals = ''] = digits.split('.');
	const kept = decimals.slice(0, least) + decimals.slice(least).replace(/0+$/, '');
	return kept === '' ? whole : `${whole}.${kept}`;
}

/** A number with just so many decimals, 12.50; no minus before a zero. */
export const rounded = (value: number, decimals: number): string => write(value, decimals, decimals);

/** Whether a number with so many decimals prints as zero: then it has neither a sign nor a way. */
export const printsAsZero = (value: number, decimals: number): boolean =>
	Math.abs(value) < 1 && Number(value.toFixed(decimals)) === 0;

/** A number with no more decimals than it needs, three at most where nothing else is said: 4, 1.5, 0.25. */
export const plainNumber = (value: number, most = 3): string => write(value, 0, most);

/** As many decimals as a gauge's smallest step has. */
export const stepDecimals = (step: number): number => String(step).split('.')[1]?.length ?? 0;

/** A number with its sign, as a gauge shows it; one that prints as zero has none. */
export const withSign = (value: number, decimals: number = Math.min(stepDecimals(value), 20)): string =>
	write(value, decimals, decimals, 'exceptZero');

/** A reading of a gauge with its sign and as many decimals as its smallest step has. */
export const readingText = (reading: number, step: number): string => withSign(reading, stepDecimals(step));

/** A base value in a unit with its label, `inUnit(17.652, 'gf')` is '1.8 g'; trailing zeros go. */
export function inUnit(value: number, id: UnitId, decimals: number = units[id].decimals): string {
	const text = write(fromBase(value, id), 0, decimals);
	const {label} = units[id];
	return label === '°' || label === '′' ? `${text}${label}` : `${text} ${label}`;
}

/** What a unit is called beside a field: its sign, or its name where it has none. */
export const unitText = (id: UnitId): string => (id === 'ofForce' ? locale.unitNames[id] : units[id].label);

/** A percentage with just so many decimals: '6.8 %'. */
export const percent = (value: number, decimals: number): string =>
	`${rounded(value, decimals)} ${units.percent.label}`;

/** A force as a stylus scale shows it: '2.10 g'. */
export const scaleText = (forceMn: number): string => {
	const {text, unit} = scaleFigure(forceMn);
	return `${text} ${unit}`;
};

/** The same with what it is in mN: '2.14 g = 21 mN'. */
export const scaleAndMn = (forceMn: number): string => `${scaleText(forceMn)} = ${inUnit(forceMn, 'mN')}`;

/** A force on a stylus scale in its parts: the digits, and what they count. */
export const scaleFigure = (forceMn: number): {readonly text: string; readonly unit: string} => ({
	text: rounded(fromBase(forceMn, 'gf'), 2),
	unit: units.gf.label,
});

/** An angle with just so many decimals: '0.25°'. */
export const inDegrees = (value: number, decimals: number): string => `${rounded(value, decimals)}${units.deg.label}`;

/** A length with no more decimals than it needs: '68 mm', '60.325 mm'. */
export const mm = (value: number): string => `${plainNumber(value)} ${units.mm.label}`;

/** At most two digits of an uncertainty, and as many decimals of its value (JCGM 100:2008 7.2.6). */
export const decimalsFor = (uncertaintyPct: number): number => {
	if (uncertaintyPct >= 0.1) return 1;
	return uncertaintyPct >= 0.01 ? 2 : 3;
};

/**
 * A size that follows from others, '18 µm ± 1 µm': whole where its uncertainty is one or more.
 *
 * @param label that of its unit, with the blank before it where it has one
 */
export const withUncertainty = (value: number, uncertainty: number, label: string): string => {
	const decimals = uncertainty >= 1 ? 0 : decimalsFor(uncertainty);
	return `${rounded(value, decimals)}${label} ± ${rounded(uncertainty, decimals)}${label}`;
};

/** A span, '6.2 % ± 0.7 %'. */
export const span = (widthPct: number, uncertaintyPct: number): string => {
	const decimals = decimalsFor(uncertaintyPct);
	return `${percent(widthPct, decimals)} ± ${percent(uncertaintyPct, decimals)}`;
};

/** 'a', 'a and b', 'a, b and c'. */
export const listed = (parts: readonly string[]): string =>
	[parts.slice(0, -1).join(locale.list.between), ...parts.slice(-1)]
		.filter((part) => part !== '')
		.join(locale.list.last);

let rules: Intl.PluralRules | undefined;

/** The form of a word that goes with a count: `plural(2, {one: 'check', other: 'checks'})`. */
export const plural = (
	count: number,
	forms: Partial<Record<Intl.LDMLPluralRule, string>> & {readonly other: string},
): string => {
	rules ??= new Intl.PluralRules(locale.name);
	return forms[rules.select(count)] ?? forms.other;
};
