import limits from '../../shared/limits.json' with {type: 'json'};
import type {Dialogue, Position} from '../check/dialogue.js';
import {hasReadings, openSeries} from '../check/series.js';
import {mnPerGram} from '../measures/tracking-force.js';
import {clearanceOf} from '../procedure/clearance.js';
import type {Facts} from '../procedure/facts.js';
import {statedZero} from '../procedure/stated-zero.js';
import type {Step} from '../procedure/step.js';
import {takes} from '../procedure/step.js';
import type {IdOf, StepId} from '../procedure/step-ids.js';
import {tickStates} from '../procedure/ticks.js';
import {carriedMn, guardHandling} from '../procedure/weighing.js';
import {nextCheckOf} from '../results/next-check.js';
import {fixed, formatIn} from '../units.js';
import {nextCheckText} from '../words/results-text.js';
import {plainNumber} from '../words/wording.js';
import {biasLater} from './bias/cure-first.js';
import {biasLines} from './bias/lines.js';
import {skatingLines} from './bias/skating-lines.js';
import {lastAdvice} from './bias/so-far.js';
import {earlierAnswers} from './earlier-answers.js';
import {geometryLines, workedOutLines} from './geometry-lines.js';
import {issuedOf} from './issued.js';
import {levelConsequence} from './level-consequence.js';
import {probeSoFar} from './probe-so-far.js';
import {line, type Shown} from './shown-lines.js';
import {verdictLines} from './verdict-lines.js';
import {zeroText} from './zero-text.js';

type Consequence = (facts: Facts) => readonly Shown[];

const bothForces =
	(step: IdOf<'number'>): Consequence =>
	(facts) => {
		const forceMn = facts.number(step);
		return forceMn === undefined ? [] : [line(`= ${formatIn(forceMn, 'gf')} = ${formatIn(forceMn, 'mN')}`)];
	};

const force: Consequence = (facts) => {
	const carried = carriedMn(facts);
	const playing = facts.number('playing-force');
	if (carried === undefined || playing === undefined) return [];
	const handling = guardHandling(facts);
	const guard = facts.number('guard-mass') ?? 0;
	return [
		line(
			`The gauge will carry ${formatIn(carried, 'gf')} = ${formatIn(carried, 'mN')} (${((100 * carried) / playing).toFixed(1)} % of the playing force).`,
		),
		...(handling === 'left-out'
			? [line(`That includes ${formatIn(guard * mnPerGram, 'gf')} for the guard that the scale did not see.`)]
			: []),
		...(handling === 'included' && guard > 0
			? [line(`The guard alone is ${formatIn(guard * mnPerGram, 'gf')} of it.`, 'dim')]
			: []),
	];
};

const clearance: Consequence = (facts) => {
	const {stylusMm, stylusWindow, guardWindow, guardMm} = clearanceOf(facts);
	const shownWindow = (label: string, [low, high]: readonly [number, number], value: number | undefined): Shown => ({
		kind: 'window',
		label,
		low,
		high,
		value,
		caption: `${label}: ${plainNumber(low)} to ${plainNumber(high)} mm${value === undefined ? '' : `, now ${plainNumber(value)} mm`}.`,
	});
	return [
		shownWindow('stylus', stylusWindow, stylusMm),
		...(guardWindow ? [shownWindow('guard', guardWindow, guardMm)] : []),
		...(guardMm === undefined
			? []
			: [line(`The guard's underside must stay more than ${limits.guardGapMm.value} mm clear.`, 'dim')]),
	];
};

/** The stated zero, once both readings are there. */
const freeZero: Consequence = (facts) => {
	const stated = statedZero(facts);
	if (!stated || !facts.answered('zero-free-after')) return [];
	const figures = {source: 'stated', zero: stated.zero, zeroUncertainty: null} as const;
	return [line(zeroText(figures, facts))];
};

const putBackForce: Consequence = (facts) => {
	const weighed = facts.number('back-force');
	const playing = facts.number('playing-force');
	if (weighed === undefined || playing === undefined) return [];
	const off = fixed(100 * (weighed / playing - 1), 1);
	return [
		line(
			`${off} % off the playing force of ${formatIn(playing, 'gf')} (±${100 * limits.putBackForceShare.value} % wanted)`,
		),
	];
};

/** What an answer brings about, shown as it is typed and once it is confirmed; by step. */
const consequences: Readonly<Partial<Record<StepId, Consequence>>> = {
	'arm-length': geometryLines,
	'arm-pivot-distance': geometryLines,
	'arm-offset': geometryLines,
	'arm-null-radius': geometryLines,
	'arm-null-other': geometryLines,
	'radius-inner': workedOutLines,
	'arm-pivot-place': () => [
		{kind: 'plan', caption: 'The deck from above: spindle in the middle, you stand at the front.'},
	],
	'playing-force': bothForces('playing-force'),
	'force-low': bothForces('force-low'),
	'force-high': bothForces('force-high'),
	'level-lr-1': levelConsequence,
	'level-lr-2': levelConsequence,
	'level-fb-1': levelConsequence,
	'level-fb-2': levelConsequence,
	'guard-account': force,
	'force-reading': force,
	'force-at-height': force,
	clearance,
	mat: (facts) =>
		facts.number('guard-depth') === undefined
			? []
			: [line(`The guard hangs ${plainNumber(facts.number('guard-depth') ?? 0)} mm below the stylus.`)],
	'mat-thickness': clearance,
	'zero-free-after': freeZero,
	'bias-drag': skatingLines,
	'back-force': putBackForce,
};

/** The verdict, and right under its figures whether the bias had better wait, so that it is read before what may be chosen. */
function verdictScreen({check, history}: Dialogue, facts: Facts): readonly Shown[] {
	const issued = issuedOf(check);
	return verdictLines(check, issued, history).toSpliced(2, 0, ...biasLater(issued?.findings ?? [], facts));
}

/** What the screen of a step shows beside its question. */
export function consequencesOf(dialogue: Dialogue, {step, slot, progress}: Position): readonly Shown[] {
	if (!step) return [];
	const {facts} = progress;
	if (takes(step, 'ticks'))
		return tickStates(step, facts).map(({line: {text}, mark}) =>
			line(
				`[${mark === 'yes' ? 'x' : mark === 'no' ? '!' : ' '}] ${text}`,
				mark === 'yes' ? 'good' : mark === 'no' ? 'warn' : 'plain',
			),
		);
	if (step.input.kind === 'confirm' && step.id !== 'next-check')
		return [...(consequences[step.id]?.(facts) ?? []), ...confirmedAgain(dialogue, step)];
	if (step.input.kind === 'rounds') return probeSoFar(dialogue, facts, step.input.place, slot);
	if (step.input.kind === 'verdict') return verdictScreen(dialogue, facts);
	if (step.input.kind === 'bias-result') return biasLines(dialogue.check);
	if (step.id === 'bias-weight' || step.id === 'bias-set') return lastAdvice(dialogue.check);
	if (step.input.kind === 'still') return earlierAnswers(dialogue, step, facts);
	if (step.id === 'next-check') {
		const {date, because} = nextCheckOf(dialogue.check, dialogue.history);
		return [line(`Next check: ${date}`, 'strong'), line(nextCheckText(because))];
	}
	return consequences[step.id]?.(facts) ?? [];
}

/** A condition that is confirmed once more while rounds hang on it. */
function confirmedAgain({check}: Dialogue, {id, touches}: Step): Shown[] {
	const hangsOnIt = touches?.includes('rounds') && check.answers[id]?.value === true && hasReadings(openSeries(check));
	return hangsOnIt
		? [
				line(
					'Was it not so while the rounds were taken? Then answer n first: they are kept apart, and new ones begin.',
					'warn',
				),
			]
		: [];
}
