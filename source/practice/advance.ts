import {between, evenUnit, resumedChance} from './chance.js';
import {shownPct} from './gauge.js';
import {isHeld, type MovingArm, moveOn, type Surroundings} from './motion.js';
import type {PracticeArm} from './practice-arm.js';
import {gaugeMicroNmPerRad, torqueOfPct, viscousMicroNmS} from './torques.js';

/** How often the gauge shows anew, and the side force wanders a little. */
const refreshMs = 200;
/** The wandering forgets where it was in about this time. */
const unrestMs = 30_000;
const kept = Math.exp(-refreshMs / unrestMs);
const fresh = Math.sqrt(1 - kept ** 2);

const usualStepMs = 1;

/** A run in progress. Changed in place, and never seen outside. */
type Run = ReturnType<typeof startRun>;

/**
 * The arm so many ms later. While it sticks time costs nothing but the trembling of the gauge. Splitting a time gives
 * the same as the whole, in whole ms.
 *
 * @param stepMs time step of the motion; 1 ms is a thousandth of the quickest swing of an arm on a gauge
 */
export function advance(arm: PracticeArm, ms: number, stepMs = usualStepMs): PracticeArm {
	const run = startRun(arm, stepMs);
	const endMs = arm.timeMs + ms;
	while (run.timeMs < endMs) {
		const refreshAtMs = (Math.floor(run.timeMs / refreshMs) + 1) * refreshMs;
		moveTo(run, Math.min(endMs, refreshAtMs));
		if (run.timeMs === refreshAtMs) refresh(run);
	}
	const {body, timeMs, movedAtMs, unrest, tremble, chance} = run;
	const {swingRad, rateRadPerS, finger} = body;
	return {...arm, swingRad, rateRadPerS, finger, timeMs, movedAtMs, unrest, tremble, chance: chance.getState()};
}

function moveTo(run: Run, untilMs: number): void {
	const {body, around} = run;
	while (run.timeMs < untilMs) {
		if (isHeld(body, around)) {
			run.timeMs = untilMs;
			return;
		}
		const ms = Math.min(run.stepMs, untilMs - run.timeMs);
		moveOn(body, around, ms / 1000);
		run.timeMs += ms;
		run.movedAtMs = run.timeMs;
	}
}

function refresh(run: Run): void {
	run.tremble = between(run.chance, -1, 1);
	run.unrest = kept * run.unrest + fresh * evenUnit(run.chance);
	run.body.unrestMicroNm = run.unrest * run.unrestUnitMicroNm + run.steadyMicroNm;
}

function startRun(arm: PracticeArm, stepMs: number) {
	const {swingRad, rateRadPerS, finger, unrest, tremble, timeMs, movedAtMs, spec} = arm;
	/** Side force that stays while one limit is looked for. */
	const steadyMicroNm = arm.settingUpMicroNm + arm.scatterMicroNm;
	const unrestUnitMicroNm = torqueOfPct(spec, spec.unrestPct);
	const unrestMicroNm = unrest * unrestUnitMicroNm + steadyMicroNm;
	const body: MovingArm = {swingRad, rateRadPerS, finger: finger && {...finger}, unrestMicroNm};
	const chance = resumedChance(arm.chance);
	const around = surroundingsOf(arm);
	return {body, around, chance, unrestUnitMicroNm, steadyMicroNm, stepMs, timeMs, movedAtMs, unrest, tremble};
}

const surroundingsOf = ({spec, table, gauge}: PracticeArm): Surroundings => ({
	table,
	momentKgMm2: spec.momentKgMm2,
	viscousMicroNmS: viscousMicroNmS(spec),
	gaugeMicroNmPerRad: gauge === null ? 0 : gaugeMicroNmPerRad(spec),
	neutralRad: gauge?.neutralRad ?? 0,
	innermostRad: gauge?.innermostRad ?? Number.NEGATIVE_INFINITY,
	outermostRad: gauge?.outermostRad ?? Number.POSITIVE_INFINITY,
});

/** Whether the arm moves, is pushed, or is about to swing away. */
export function isMoving(arm: PracticeArm): boolean {
	const {body, around} = startRun(arm, usualStepMs);
	return !isHeld(body, around);
}

/** What the gauge shows now, in its own sign, in percent of the force carried; null without a gauge. */
export const readingShown = ({spec, gauge, swingRad, tremble}: PracticeArm): number | null =>
	gauge === null ? null : shownPct(spec, gauge, swingRad, tremble);
