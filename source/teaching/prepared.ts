import {type Dialogue, positionOf} from '../check/dialogue.js';
import {progressOf} from '../check/progress.js';
import {promptOf} from '../check/prompt.js';
import {reduce} from '../check/reduce.js';
import {type Entry, respond} from '../check/respond.js';
import type {LessonArm} from '../practice/arms.js';
import {pivotPlaces} from '../procedure/geometry.js';
import {procedure} from '../procedure/index.js';
import {readAnswer} from '../procedure/read-answer.js';
import type {Step} from '../procedure/step.js';
import {practiceWords} from '../words/practice.js';
import {atQuestion, type BenchState, benchNow} from './bench-state.js';
import {lessonOf} from './deck.js';
import {instruments} from './instruments.js';

/** A conversation whose questions are answered by somebody who reads the bench rightly, but takes its deck as it came. */
type Run = {readonly name: string; readonly at: string; readonly isDone: (step: Step) => boolean};

// More questions than a check has; a run that is still going is lost.
const mostQuestions = 300;

function answered(start: Dialogue, bench: BenchState, {name, at, isDone}: Run): Dialogue {
	let [dialogue, state] = [start, bench];
	for (let asked = 0; asked < mostQuestions; asked++) {
		const {step} = positionOf(dialogue);
		if (!step || isDone(step)) return dialogue;
		state = atQuestion(state, dialogue);
		const next = respond(dialogue, entryFor(dialogue, step, state, name), at);
		if (!next || next.refusal !== undefined)
			throw new RangeError(`The invented bench has no answer to '${step.id}': ${next?.refusal?.id ?? 'left'}`);
		dialogue = next;
	}
	throw new RangeError('The invented bench came to no end.');
}

function entryFor(dialogue: Dialogue, step: Step, state: BenchState, name: string): Entry {
	const prompt = promptOf(dialogue);
	const {facts} = positionOf(dialogue).progress;
	const answer =
		instruments[step.id]?.answer?.(benchNow(state, facts)) ?? knownOfArm(lessonOf(state.notes), name)[step.id];
	switch (prompt.kind) {
		case 'choice': {
			const wishes = [answer, prompt.initial, 'override', prompt.options[0]?.id];
			const chosen = wishes.find((wish) => prompt.options.some(({id}) => id === wish)) ?? '';
			return {kind: 'choose', id: chosen};
		}
		case 'field':
			return {kind: 'text', text: answer ?? prompt.initial};
		case 'yes-no':
		case 'still':
		case 'side':
		case 'none':
			return {kind: 'yes'};
	}
}

/** What is known of the arm and the tools: answers to fill in, by step. */
export function knownAnswers({check, names}: Dialogue, name: string): Dialogue['check']['answers'] {
	const known = check.practice ? knownOfArm(lessonOf(check.practice), name) : {};
	return procedure.reduce((sofar, step) => {
		const typed = known[step.id];
		const read = typed === undefined ? undefined : readAnswer(step, typed, progressOf(sofar).facts, names);
		if (read?.kind !== 'value') return sofar;
		return reduce(sofar, {type: 'answer', step: step.id, value: read.value, typed: read.typed, at: check.startedAt});
	}, check).answers;
}

/** The check of an invented arm as somebody else has prepared it, up to the probe; no deed was done to the deck. */
export const preparedBy = (dialogue: Dialogue, bench: BenchState, name: string, at: string): Dialogue =>
	answered(dialogue, bench, {name, at, isDone: ({id}) => id === 'probe-inner'});

const pivotPlaceOf = (directionDeg: number): string =>
	pivotPlaces.find(({degrees}) => degrees === directionDeg)?.id ?? 'right-rear';

/**
 * What is known of an invented arm and the tools before the check begins, as a technician would type it; a choice by its id. All of it is invented.
 */
export function knownOfArm({spec, bench, wireStiffness}: LessonArm, name: string): Readonly<Record<string, string>> {
	const {geometry, gauge} = spec;
	return {
		'arm-name': name,
		'arm-length': String(geometry.effectiveLengthMm),
		'arm-pivot-distance': String(geometry.pivotDistanceMm),
		'arm-pivot-place': pivotPlaceOf(spec.pivotDirectionDeg),
		'arm-bearing': 'gimbal',
		'arm-loading': spec.loading,
		'arm-wire-path': 'free-loop',
		'arm-wire-stiffness': wireStiffness,
		'arm-bias-device': spec.bias?.device.kind ?? 'none',
		'arm-damping': spec.damping ? 'yes' : 'no',
		'deck-sprung': 'no',
		'playing-force': `${spec.playingMn} mN`,
		'guard-mass': String(spec.guardMassG),
		'guard-depth': String(bench.clearance.guardDepthMm),
		'tools-name': practiceWords.known.tools,
		'gauge-unit': 'percent',
		'gauge-step': String(gauge.stepPct),
		'gauge-top': String(gauge.topPct),
		'gauge-sign': 'arm-out',
		'gauge-turns': 'inner',
	};
}
