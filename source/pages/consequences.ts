import limits from '../../shared/limits.json' with {type: 'json'};
import type {Check} from '../check/check.js';
import type {Dialogue, Position} from '../check/dialogue.js';
import {stillItems} from '../check/prompt-options.js';
import {hasReadings, openSeries} from '../check/series.js';
import type {Facts} from '../procedure/facts.js';
import {statedZero} from '../procedure/hold-limits.js';
import {stepById} from '../procedure/index.js';
import {type Step, type StepOf, takes} from '../procedure/step.js';
import type {StepId} from '../procedure/step-ids.js';
import {nextLine, tickStates} from '../procedure/ticks.js';
import {besidePlaying, guardWeightMn} from '../procedure/weighing.js';
import {nextCheckOf} from '../results/next-check.js';
import {actionOfCheck} from '../results/tried.js';
import {words} from '../words/index.js';
import {nextCheckText} from '../words/results-text.js';
import {cautionOf, tickText, titleOf} from '../words/step-text.js';
import {answerInWords} from './answer-text.js';
import {biasLines} from './bias/lines.js';
import {skatingLines, wantedLines} from './bias/skating-lines.js';
import {lastAdvice} from './bias/so-far.js';
import {forceFigure} from './figure-asked.js';
import {bothForces, carriedLines, clearanceShown} from './force-and-height.js';
import {geometryLines, unusualLengths, workedOutLines} from './geometry-lines.js';
import {issuedOf} from './issued.js';
import {levelConsequence} from './level-consequence.js';
import {zeroText} from './on-gauge.js';
import {probeSoFar} from './probe-so-far.js';
import {line, type Shown, unheard} from './shown-lines.js';
import {touchOf} from './touches.js';
import {verdictLines} from './verdict-lines.js';

const said = words.pages.consequences;

type Consequence = (facts: Facts) => readonly Shown[];

const guardHangs: Consequence = (facts) => {
	const depthMm = facts.number('guard-depth');
	return depthMm === undefined ? [] : [line(said.guardHangs({depthMm}))];
};

/** The stated zero, once both readings are there. */
const freeZero: Consequence = (facts) => {
	const stated = statedZero(facts);
	if (!stated || !facts.answered('zero-free-after')) return [];
	return [line(zeroText({source: 'stated', zero: stated.zero, zeroUncertainty: null}, facts))];
};

const putBackForce: Consequence = (facts) => {
	const off = besidePlaying(facts, facts.number('back-force'), limits.putBackForceShare.value);
	return off ? [line(said.putBackForce(off))] : [];
};

/** What an answer brings about, shown as it is typed and once it is confirmed; by step. */
const consequences: Readonly<Partial<Record<StepId, Consequence>>> = {
	'arm-length': geometryLines,
	'arm-pivot-distance': geometryLines,
	'arm-offset': geometryLines,
	'arm-null-radius': geometryLines,
	'arm-null-other': geometryLines,
	'radius-inner': workedOutLines,
	'arm-pivot-place': () => [{kind: 'plan', caption: said.deck}],
	// After the lengths: line by line nothing is shown while one of them is typed.
	'playing-force': (facts) => [...workedOutLines(facts), ...bothForces('playing-force')(facts)],
	'force-low': bothForces('force-low'),
	'force-high': bothForces('force-high'),
	'level-lr-1': levelConsequence('leftRight'),
	'level-lr-2': levelConsequence('leftRight'),
	'level-fb-1': levelConsequence('frontBack'),
	'level-fb-2': levelConsequence('frontBack'),
	'guard-account': carriedLines,
	'force-reading': carriedLines,
	'force-at-height': carriedLines,
	'guard-gap': clearanceShown,
	clearance: clearanceShown,
	mat: guardHangs,
	'mat-thickness': (facts) => clearanceShown(facts).map(unheard),
	'zero-free-after': freeZero,
	'bias-drag': skatingLines,
	'bias-radius-middle': skatingLines,
	'back-force': putBackForce,
	'bias-on': wantedLines,
	'back-weight': (facts) => {
		const playingMn = facts.number('playing-force');
		return playingMn === undefined ? [] : [unheard(forceFigure(playingMn + guardWeightMn(facts)))];
	},
};

/** What the screen of a step shows beside its question. */
export function consequencesOf(dialogue: Dialogue, {step, slot, progress}: Position): readonly Shown[] {
	if (!step) return [];
	const {check} = dialogue;
	const {facts} = progress;
	const brought = consequences[step.id]?.(facts) ?? [];
	const {input} = step;
	switch (input.kind) {
		case 'ticks':
			return takes(step, 'ticks') ? tickLines(step, facts) : [];
		case 'confirm':
			return step.id === 'next-check'
				? nextCheckLines(dialogue)
				: [...confirmedAgain(dialogue, step), ...brought, ...touchOf(step.id, facts)];
		case 'rounds':
			return probeSoFar(dialogue, facts, input.place, slot);
		case 'verdict':
			return verdictLines(check, issuedOf(check), dialogue.history, progress, actionOfCheck(check));
		case 'bias-result':
			return biasLines(check);
		case 'still':
			return earlierAnswers(dialogue, step, facts);
		case 'text':
		case 'choice':
		case 'several':
		case 'number':
		case 'signed':
		case 'clock':
		case 'profile':
			return step.id === 'bias-weight' || step.id === 'bias-set' ? beforeSetting(dialogue.check, step, facts) : brought;
	}
}

/** What the last setting was to be changed to; before there was one, what is wanted. */
function beforeSetting(check: Check, step: Step, facts: Facts): readonly Shown[] {
	const advice = lastAdvice(check, cautionOf(step) !== undefined);
	return advice.length > 0 ? advice : wantedLines(facts);
}

/** The question names the open lines to a voice. */
function tickLines(step: StepOf<'ticks'>, facts: Facts): Shown[] {
	const states = tickStates(step, facts);
	const asked = nextLine(states);
	const lines = states.map(({line: id, mark}): Shown => {
		const tone = mark === 'yes' ? 'good' : mark === 'no' ? 'warn' : id === asked ? 'strong' : 'plain';
		return line(said.ticked({text: tickText(step.id, id), mark, isAsked: id === asked}), tone);
	});
	return states.every(({mark}) => mark === 'yes') ? lines : lines.map(unheard);
}

function nextCheckLines({check, history}: Dialogue): Shown[] {
	const next = nextCheckOf(check, history);
	return [line(said.nextCheck(next), 'strong'), line(nextCheckText(next.because))];
}

/** A condition that is confirmed once more while rounds hang on it. */
function confirmedAgain({check}: Dialogue, {id, touches}: Step): Shown[] {
	const hangsOnIt = touches?.includes('rounds') && check.answers[id]?.value === true && hasReadings(openSeries(check));
	return hangsOnIt ? [line(said.wasItNotSo, 'warn')] : [];
}

/** What was answered before, beside the question whether it is still so; what a profile says otherwise by now, first. */
function earlierAnswers(dialogue: Dialogue, step: Step, facts: Facts): Shown[] {
	const {check} = dialogue;
	const then: Readonly<Record<string, string>> = (step.id === 'still-last-time' && check.changedSince) || {};
	const isResized = 'arm-length' in then || 'arm-pivot-distance' in then;
	const unusual = isResized ? unusualLengths(facts) : undefined;
	const ids = stillItems(dialogue, step).flatMap(({steps, shows = steps}) => [
		...steps.filter((id) => id in then),
		...shows.filter((id) => !(id in then)),
	]);
	const given = ids.flatMap((id) => {
		const answer = check.answers[id];
		return answer ? [{id, title: titleOf(id), typed: answerInWords(id, answer, facts), since: then[id]}] : [];
	});
	const corrected = given.flatMap(({since, ...one}) =>
		since === undefined ? [] : [line(said.corrected({...one, since}), 'warn')],
	);
	// What was only confirmed is named by the question itself.
	const isConfirmed = (id: StepId): boolean => ['confirm', 'ticks'].includes(stepById(id)?.input.kind ?? '');
	const same = given.filter(({id, typed, since}) => since === undefined && typed !== '' && !isConfirmed(id));
	return [
		...(unusual === undefined ? [] : [line(unusual, 'warn')]),
		...corrected,
		// All that is taken over stands on one page.
		...(same.length === 0 ? [] : [line(said.answers({answers: same.map(said.answer)}))]),
	];
}
