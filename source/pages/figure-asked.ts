import type {Dialogue, Position} from '../check/dialogue.js';
import {readingAt, type Slot} from '../check/rounds.js';
import {openSeries} from '../check/series.js';
import {clearanceState} from '../procedure/clearance.js';
import {allowedTiltDeg} from '../procedure/level.js';
import {isOnPlace} from '../procedure/places.js';
import type {StageId, Step} from '../procedure/step.js';
import type {StepId} from '../procedure/step-ids.js';
import {units} from '../units.js';
import {words} from '../words/index.js';
import {rounded, scaleFigure, stepDecimals} from '../words/numbers.js';
import {signedTyped} from '../words/typed.js';
import {wantedReading} from './bias/so-far.js';
import type {BigFigure} from './instruments/figure.js';

const said = words.instruments.asked;

/** What stands in large digits while a number is typed: what it is to be, and what it stands against. */
export type FigureAsked = {
	/** Shown until something is typed. */
	readonly target: BigFigure | undefined;
	readonly note: string | undefined;
};

/** Known beforehand, or asked when all is done: nobody reads these off an instrument with a hand on the arm. */
const sittingStages: readonly StageId[] = ['arm', 'tools', 'next'];

/** Chosen by what is shown beside them, with the bias still to be set. */
const chosenSteps: readonly string[] = ['bias-drag', 'bias-radius-middle'] satisfies StepId[];

const isSitting = ({id, stage}: Step): boolean => sittingStages.includes(stage) || chosenSteps.includes(id);

/** Undefined where no number is read off at the bench. */
export function figureAsked({check, mode}: Dialogue, position: Position): FigureAsked | undefined {
	const {step, slot, stuck, mendable} = position;
	if (mode.kind !== 'ask' || !step || isSitting(step) || (stuck && !mendable)) return;
	if (step.input.kind === 'rounds') return slot && {target: biasFigure(position), note: otherLimit(check, slot)};
	if (step.input.kind !== 'number' && step.input.kind !== 'signed') return;
	return {target: targetOf(step, position), note: noteOf(step, position)};
}

/** The limit that the other one is held against. */
function otherLimit(check: Dialogue['check'], slot: Slot): string | undefined {
	if (slot.which === 'innerLimit') return;
	const inner = readingAt(openSeries(check), {...slot, which: 'innerLimit'});
	return inner && said.innerLimit({typed: signedTyped(inner.typed)});
}

/** What the gauge is to show with the bias on, before anything was read there. */
function biasFigure({slot, progress: {facts}}: Position): BigFigure | undefined {
	if (slot?.which !== 'innerLimit' || slot.index > 0 || !isOnPlace(slot.place)) return;
	const reading = wantedReading(facts, slot.place);
	if (!reading) return;
	const {value, step, unit, of} = reading;
	const text = rounded(Math.abs(value), stepDecimals(step));
	const {label} = units[unit];
	const side = words.figures.wayOf(value);
	return {kind: 'figure', text, unit: label, side, note: said.aims[of], tone: 'curve', caption: ''};
}

/** A force to set, in large digits, in the hue of what is wanted: it is no reading. */
export const forceFigure = (forceMn: number): BigFigure => {
	const {text, unit} = scaleFigure(forceMn);
	return {
		kind: 'figure',
		text,
		unit,
		note: said.aimAt({text, unit}),
		tone: 'curve',
		caption: said.target({text, unit}),
	};
};

/** What the scale is to show; undefined where a number is only read. */
function targetMn({id}: Step, {progress: {facts}}: Position): number | undefined {
	if (id === 'back-force') return facts.number('playing-force');
	const isSet = facts.is('weighed', 'with') || !facts.is('guard-on', 'on');
	return id === 'force-reading' && isSet ? facts.number('playing-force') : undefined;
}

function targetOf(step: Step, position: Position): BigFigure | undefined {
	const forceMn = targetMn(step, position);
	return forceMn === undefined ? undefined : forceFigure(forceMn);
}

function noteOf(step: Step, position: Position): string | undefined {
	const {facts} = position.progress;
	const forceMn = targetMn(step, position);
	if (forceMn !== undefined) return said.aimAt(scaleFigure(forceMn));
	if (step.stage === 'level')
		return said.allowed({deg: allowedTiltDeg(facts)[isFrontBack(step) ? 'frontBack' : 'leftRight']});
	const {stylusWindow, guardWindow} = clearanceState(facts);
	const window = step.id === 'guard-gap' ? guardWindow : step.id === 'clearance' ? stylusWindow : undefined;
	return window && said.window({lowMm: window[0], highMm: window[1]});
}

const isFrontBack = ({id}: Step): boolean => id === 'level-fb-1' || id === 'level-fb-2';

/** A number as it is being typed, in large digits: its side or unit beside it, as far as it was typed. */
export function typedFigure(typed: string, unit: string, note: string | undefined): BigFigure {
	const [, text = '', beside = ''] = /^\s*([-+−]?[\d.,]*)\s*(.*?)\s*$/u.exec(typed) ?? [];
	const isUnit =
		beside !== 'in' &&
		Object.values(units).some(({label, also}) => label === beside || also.some((one) => one === beside));
	return {
		kind: 'figure',
		text: text.replace('−', '-'),
		unit: isUnit ? beside : unit,
		side: isUnit || beside === '' ? undefined : beside,
		note,
		caption: typed,
	};
}
