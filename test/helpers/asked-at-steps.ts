import {biasDeviceIds} from '../../source/procedure/bias-devices.js';
import type {StepId} from '../../source/procedure/step-ids.js';
import type {StepValues} from '../../source/procedure/step-values.js';
import {words} from './said.js';

const mounts = ['stands', 'hangs', 'clamped', 'hand'] as const;
const both = [true, false] as const;
const rounds = mounts.map((mount) => ({radiusMm: 68, mount}));
const atRadius = [{radiusMm: 136}, {radiusMm: undefined}];

/** Values for the words of each step that has any: every way in which its sentences differ. */
const samples: {readonly [Id in keyof StepValues]: readonly StepValues[Id][]} = {
	'bias-clock-outer': atRadius,
	'bias-clock-middle': atRadius,
	'bias-clock-inner': atRadius,
	'bias-angle-outer': atRadius,
	'bias-angle-middle': atRadius,
	'bias-angle-inner': atRadius,
	'probe-inner': rounds,
	'probe-outer': rounds,
	'probe-extra': rounds,
	'probe-closing': rounds,
	'probe-bias-outer': rounds,
	'probe-bias-middle': rounds,
	'probe-bias-inner': rounds,
	'arm-offset': both.map((isWorkedOut) => ({isWorkedOut})),
	mat: [{deepGuardMm: 1}, {deepGuardMm: undefined}],
	'level-lr-1': both.map((isSprung) => ({isSprung})),
	'bias-off': biasDeviceIds.map((device) => ({device})),
	'guard-on': both.map((isUnipivot) => ({isUnipivot})),
	'guard-account': [{guardG: 0.5}],
	'force-reading': both.flatMap((hasGuard) =>
		[20.6, undefined].flatMap((targetMn) => [3, undefined].map((matMm) => ({hasGuard, targetMn, matMm}))),
	),
	'gauge-turns': both.map((isInHand) => ({isInHand})),
	'arm-afloat': both.flatMap((hasGuard) => both.map((hasSpring) => ({hasGuard, hasSpring}))),
	'guard-gap': mounts.map((mount) => ({depthMm: 1.3, mount})),
	'first-swing': both.map((isUnipivot) => ({isUnipivot})),
	'back-weight': [{playingMn: 17.7, guardMn: 4.9}],
	'back-guard': both.map((isUnipivot) => ({isUnipivot})),
	clearance: both.flatMap((hangsFar) => mounts.map((mount) => ({hangsFar, mount}))),
	'back-force': [{setToMn: 17.7}, {setToMn: undefined}],
	'bias-drag': both.map((hasDevice) => ({usualDrag: 0.3, hasDevice})),
	'bias-on': biasDeviceIds.map((device) => ({device})),
	'back-bias': biasDeviceIds.flatMap((device) => [
		{device, chosen: {number: '2', setting: '2.4 g'}, setting: undefined},
		{device, chosen: undefined, setting: 'third notch'},
	]),
};

const samplesOf = (id: StepId): readonly object[] =>
	(samples as Partial<Record<StepId, readonly object[]>>)[id] ?? [{}];

const rendered = (id: StepId, text: string | ((values: never) => string)): readonly string[] =>
	typeof text === 'string' ? [text] : samplesOf(id).map((values) => text(values as never));

/** What every step asks and why, with all values that its sentences tell of. */
export const askedAtSteps = (Object.keys(words.steps) as StepId[]).map((id) => {
	const {ask, short = '', why, mistake, caution = ''} = words.steps[id];
	return {
		id,
		asks: [...rendered(id, ask), short],
		reasons: [...rendered(id, why), ...rendered(id, mistake), caution],
	};
});
