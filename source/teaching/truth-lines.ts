import type {Check} from '../check/check.js';
import type {ReadingNote} from '../check/practice-notes.js';
import {isMeasured, type RadiusFigures} from '../findings/figures-types.js';
import type {Issued} from '../findings/issued.js';
import {line, type Shown} from '../findings/shown-lines.js';
import {type Truth, truthOf} from '../practice/truth.js';
import {placeLabel} from '../procedure/places.js';
import {fixed} from '../units.js';
import {adviceLines} from './advice.js';
import {type Deed, lessonOf, specOn} from './deck.js';
import {standingReadings} from './standing-readings.js';

type Place = {readonly figures: RadiusFigures; readonly truth: Truth};

const signed = (pct: number): string => (fixed(pct, 1).startsWith('-') ? fixed(pct, 1) : `+${fixed(pct, 1)}`);

/** The hidden truth of an invented arm beside what was found of it, and what to do better; empty for a real check. */
export function truthLines(check: Check, issued: Issued | null): readonly Shown[] {
	const {practice} = check;
	if (!practice) return [];
	const lesson = lessonOf(practice);
	const notes = standingReadings(check);
	const places = (issued?.figures.probe ?? []).flatMap((figures) => placeOf(check, figures, notes));
	return [
		line(`What was hidden: ${lesson.name.toLowerCase()}`, 'strong'),
		line(lesson.lesson),
		...(places.length === 0
			? [line('The probe was not taken to its end, so there is nothing to compare.', 'warn')]
			: [table(places)]),
		...places.map(madeOf),
		...lessonNamed(check, issued),
		line('What to do better', 'strong'),
		...adviceLines(check, notes),
		line(`The same arm with the same draught: armdrift practice --on ${lesson.id} --seed ${practice.seed}`, 'dim'),
	];
}

/** The arm as its deck stood when it was probed at a radius. */
function placeOf({practice}: Check, figures: RadiusFigures, notes: readonly ReadingNote[]): Place[] {
	const step = `probe-${figures.place === 'other' ? 'extra' : figures.place}`;
	const note = notes.findLast((one) => one.step === step);
	if (!practice || !note) return [];
	return [{figures, truth: truthOf(specOn(lessonOf(practice), note.deck), figures.radiusMm)}];
}

function table(places: readonly Place[]): Shown {
	const rows = places.map(({figures, truth}) => [
		`${placeLabel(figures.place)} ${figures.radiusMm} mm`,
		...(isMeasured(figures)
			? [
					...compared(
						signed(figures.pullPct),
						figures.pullUncertaintyPct,
						figures.pullPct - truth.pullPct,
						signed(truth.pullPct),
					),
					...compared(
						fixed(figures.bandPct, 1),
						figures.bandUncertaintyPct,
						figures.bandPct - truth.bandPct,
						fixed(truth.bandPct, 1),
					),
				]
			: ['off scale', signed(truth.pullPct), 'off scale', fixed(truth.bandPct, 1)]),
	]);
	return {
		kind: 'table',
		head: ['', 'pull found, %', 'hidden', 'band found, %', 'hidden'],
		rows,
		caption: rows
			.map(
				([where, pull, truePull, band, trueBand]) =>
					`${where}: pull found ${pull} %, hidden ${truePull}; band found ${band} %, hidden ${trueBand}.`,
			)
			.join(' '),
	};
}

/** What was found, and the hidden value with whether it lies within the stated ±. */
function compared(found: string, statedPct: number, errorPct: number, hidden: string): [string, string] {
	return [`${found} ± ${fixed(statedPct, 1)}`, `${hidden} ${Math.abs(errorPct) <= statedPct ? 'within' : 'OUTSIDE'}`];
}

function madeOf({figures, truth}: Place): Shown {
	const parts = [
		`wires ${signed(truth.wirePct)}`,
		`tilt ${signed(truth.tiltPct)}`,
		...(truth.biasPct === 0 ? [] : [`bias ${signed(truth.biasPct)}`]),
	];
	return line(`The hidden pull at the ${placeLabel(figures.place)} radius is made of ${parts.join(', ')} %.`);
}

const cures: Readonly<Record<string, Deed>> = {
	'tilted-deck': 'levelled',
	'bias-left-on': 'bias-off',
	'paddle-left-in': 'damping-out',
	'stiff-wire': 'leads-dressed',
	'wire-and-bearing': 'leads-dressed',
	'lever-badly-set': 'pulley-moved',
};

/** Whether the findings name the lesson; what was put right before the probe cannot be found in it. */
function lessonNamed(check: Check, issued: Issued | null): Shown[] {
	const {practice} = check;
	if (!practice || !issued) return [];
	const lesson = lessonOf(practice);
	const finding = issued.findings.find(({code}) => code === lesson.finding);
	if (finding) return [line(`Your findings name it: "${finding.found}"`, 'good')];
	const cure = cures[lesson.id];
	if (cure !== undefined && practice.deck.done.includes(cure))
		return [
			line('Your findings do not name it, because you put it right: that is what the preparation is for.', 'good'),
		];
	const isBias = lesson.readsBias;
	return [
		line(
			isBias
				? "It only shows with the bias on: at the verdict choose 'set the bias device against skating'."
				: 'Your findings do not name it. Look at what the readings lacked, below.',
			'warn',
		),
	];
}
