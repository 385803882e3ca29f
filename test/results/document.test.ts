import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {parseDocument} from '../../source/results/document.js';
import {faultText} from '../../source/words/documents.js';
import {inOrder} from '../helpers/said.js';
import {example} from './example.js';

/** The example with the value at a path set, or its key taken out when the value is undefined. */
const changed = (changes: Record<string, unknown>): unknown => {
	const document: unknown = structuredClone(example());
	for (const [path, value] of Object.entries(changes)) {
		const keys = path.split('.');
		const last = keys.pop() ?? '';
		const parent = keys.reduce<unknown>((at, key) => Reflect.get(Object(at), key), document);
		if (value === undefined) Reflect.deleteProperty(Object(parent), last);
		else Reflect.set(Object(parent), last, value);
	}
	return document;
};

const pathsOf = (json: unknown): string[] => {
	const parsed = parseDocument(json);
	return parsed.ok ? [] : parsed.faults.map(({path}) => path);
};

const round = {innerLimit: 1, outerLimit: 2};
const turned = {innerLimit: -1, outerLimit: -2, gauge: 'turned'};
const noReadings = {'bias.readings': undefined};

describe('a sound document', () => {
	it.each([
		['the worked example', {}],
		[
			'one without optional parts',
			{level: undefined, clearance: undefined, cartridge: undefined, limits: undefined, bias: undefined},
		],
		['one with empty optional parts', {limits: {}, cartridge: {}}],
		['one with single level readings', {'level.leftRightDeg': [0.1], 'level.frontBackDeg': [44.9]}],
		[
			'one with more radii',
			{
				'probe.2': {place: 'other', radiusMm: 100, rounds: [round]},
				'probe.3': {place: 'other', radiusMm: 101, rounds: [round]},
			},
		],
		['limits that are equal', {limits: {pullGoodPct: 3, pullUsablePct: 3}}],
		['a round whose limits are equal', {'probe.0.rounds': [{innerLimit: 2, outerLimit: 2}]}],
		['a radius just inside the reach', {'probe.0.radiusMm': 233 - 215.4 + 0.011}],
		['a zero that is stated where no round is turned', {'probe.0.rounds': [round], 'gauge.zero': 0.2}],
		['a bias device without readings', {bias: {device: 'magnet'}}],
		[
			'zero where zero is allowed',
			{'level.stepDeg': 0, 'gauge.nudge': 0, 'clearance.stylusMm': 0, 'trackingForce.guardMassG': 0},
		],
	])('is %s', (_what, changes) => {
		expect(pathsOf(changed(changes))).toEqual([]);
	});

	it('is handed back as it was', () => {
		const parsed = parseDocument(example());
		expect(parsed.ok && parsed.document).toEqual(example());
	});
});

describe('a fault of shape is named at its very key', () => {
	it.each<[string, Record<string, unknown>, string]>([
		['a missing part', {arm: undefined}, 'arm'],
		['a missing probe', {probe: undefined}, 'probe'],
		['a missing key', {'arm.effectiveLengthMm': undefined}, 'arm.effectiveLengthMm'],
		['a missing limit of a round', {'probe.0.rounds.1.outerLimit': undefined}, 'probe[0].rounds[1].outerLimit'],
		['a missing level reading', {'level.frontBackDeg': undefined}, 'level.frontBackDeg'],
		['a missing stylus height', {'clearance.stylusMm': undefined}, 'clearance.stylusMm'],
		['a missing bias device', {'bias.device': undefined}, 'bias.device'],
		['an unknown part', {extra: 1}, 'extra'],
		['an unknown key', {'gauge.colour': 'red'}, 'gauge.colour'],
		['an unknown key of a round', {'probe.1.rounds.0.note': 'x'}, 'probe[1].rounds[0].note'],
		['an unknown key of a bias reading', {'bias.readings.0.place': 'inner'}, 'bias.readings[0].place'],
		['a key that only looks inherited', {'arm.constructor': 1}, 'arm.constructor'],
		['null for a part', {level: null}, 'level'],
		['a list for a part', {arm: []}, 'arm'],
		['a number as text', {'arm.pivotDistanceMm': '215'}, 'arm.pivotDistanceMm'],
		['a length of zero', {'arm.effectiveLengthMm': 0}, 'arm.effectiveLengthMm'],
		['a step of zero', {'gauge.step': 0}, 'gauge.step'],
		['an end of the scale that is not told', {'gauge.topOfScale': undefined}, 'gauge.topOfScale'],
		['a gauge that is turned otherwise', {'probe.0.rounds.0.gauge': 'as used'}, 'probe[0].rounds[0].gauge'],
		['a closing round that is none', {'probe.0.rounds.3.closing': false}, 'probe[0].rounds[3].closing'],
		[
			'a turned round with the bias on',
			{'bias.readings.0.rounds.0.gauge': 'turned'},
			'bias.readings[0].rounds[0].gauge',
		],
		[
			'a closing round with the bias on',
			{'bias.readings.0.rounds.0.closing': true},
			'bias.readings[0].rounds[0].closing',
		],
		['a negative top of scale', {'gauge.topOfScale': -20}, 'gauge.topOfScale'],
		['a negative nudge', {'gauge.nudge': -0.1}, 'gauge.nudge'],
		['a negative uncertainty', {'trackingForce.relativeUncertaintyPct': -1}, 'trackingForce.relativeUncertaintyPct'],
		['a negative mass', {'trackingForce.guardMassG': -1}, 'trackingForce.guardMassG'],
		['a number that is not finite', {'gauge.zero': Number.POSITIVE_INFINITY}, 'gauge.zero'],
		['an unknown unit', {'gauge.unit': 'oz'}, 'gauge.unit'],
		['an unknown loading', {'arm.loading': 'magnet'}, 'arm.loading'],
		['an unknown guard handling', {'trackingForce.guard': true}, 'trackingForce.guard'],
		['an unknown place', {'probe.1.place': 'middle'}, 'probe[1].place'],
		['an unknown bias device', {'bias.device': 'rubber band'}, 'bias.device'],
		['no rounds', {'probe.0.rounds': []}, 'probe[0].rounds'],
		['no level reading', {'level.leftRightDeg': []}, 'level.leftRightDeg'],
		['three level readings', {'level.leftRightDeg': [0, 0, 0]}, 'level.leftRightDeg'],
		['a tilt of 45°', {'level.leftRightDeg': [0, -45]}, 'level.leftRightDeg[1]'],
		['a limit of zero', {'limits.bandGoodPct': 0}, 'limits.bandGoodPct'],
		['a drag out of its range', {'bias.effectiveDrag': 0.61}, 'bias.effectiveDrag'],
		['a single bias reading', {'bias.readings': [{radiusMm: 68, rounds: [round]}]}, 'bias.readings'],
		['a lever past twelve', {'bias.readings.0.leverClock': '13:00'}, 'bias.readings[0].leverClock'],
		['a lever of sixty minutes', {'bias.readings.1.leverClock': '1:60'}, 'bias.readings[1].leverClock'],
	])('%s', (_what, changes, path) => {
		expect(pathsOf(changed(changes))).toEqual([path]);
	});

	it.each([[[]], [3], ['text'], [null]])('%j is no document at all, and has no path', (json) => {
		expect(pathsOf(json)).toEqual(['']);
	});

	it('one line for each fault', () => {
		const json = changed({'arm.loading': 'x', 'gauge.a': 1, 'gauge.b': 2, 'probe.0.rounds.0.innerLimit': null});
		expect(pathsOf(json).sort()).toEqual(['arm.loading', 'gauge.a', 'gauge.b', 'probe[0].rounds[0].innerLimit']);
	});

	it('says what was found and what is wanted', () => {
		const parsed = parseDocument(changed({'gauge.unit': 'oz'}));
		const values = {found: 'oz', key: 'gauge.unit', oneOf: ['percent', 'mN', 'gf']};
		const faults = parsed.ok ? [] : parsed.faults;
		expect(faults).toEqual([{path: 'gauge.unit', id: 'shape', values}]);
		expect(faults.map(faultText).join('\n')).toMatch(inOrder('"oz"', '"percent"', '"mN"', '"gf"'));
	});

	it('shows control characters of keys and values escaped', () => {
		const parsed = parseDocument(changed({'gauge.\u001b[31m\u202e': 1, 'gauge.unit': '\u001b[2J\u009b'}));
		const lines = parsed.ok ? [] : parsed.faults.map((fault) => `${fault.path}: ${faultText(fault)}`);
		expect(lines).toHaveLength(2);
		expect(lines.join('')).not.toMatch(/[\p{Cc}\p{Cf}]/u);
		expect(lines.join('')).toContain('\\u001b[2J');
	});
});

describe('a fault across fields is named at its key', () => {
	it.each<[string, Record<string, unknown>, string]>([
		['crossed limits', {'probe.0.rounds.1.innerLimit': 11}, 'probe[0].rounds[1].innerLimit'],
		[
			'crossed limits with the bias on',
			{'bias.readings.1.rounds.0.innerLimit': 13},
			'bias.readings[1].rounds[0].innerLimit',
		],
		['a second inner radius', {'probe.1.place': 'inner'}, 'probe[1].place'],
		['no outer radius', {'probe.1.place': 'other'}, 'probe'],
		['an inner radius outside the outer one', {'probe.0.radiusMm': 137}, 'probe[0].radiusMm'],
		['the same radius twice', {'probe.0.radiusMm': 136}, 'probe[1].radiusMm'],
		['the same bias radius twice', {'bias.readings.1.radiusMm': 136}, 'bias.readings[1].radiusMm'],
		['a radius nearer than the arm reaches', {'probe.0.radiusMm': 17}, 'probe[0].radiusMm'],
		['a radius farther than the arm reaches', {'probe.1.radiusMm': 449}, 'probe[1].radiusMm'],
		[
			'a radius a hundredth of a millimetre inside the reach',
			{'probe.0.radiusMm': 233 - 215.4 + 0.01},
			'probe[0].radiusMm',
		],
		['a bias radius out of reach', {'bias.readings.0.radiusMm': 449}, 'bias.readings[0].radiusMm'],
		['limits the wrong way round', {'limits.pullGoodPct': 5}, 'limits.pullUsablePct'],
		['a good limit above the usual usable one', {limits: {bandGoodPct: 7}}, 'limits.bandUsablePct'],
		['crossed limits of a turned round', {'probe.0.rounds.0.outerLimit': -2}, 'probe[0].rounds[0].innerLimit'],
		['turned rounds at a second place', {'probe.1.rounds.3': turned}, 'probe[1].rounds[3].gauge'],
		['a turned round without one as used', {'probe.0.rounds': [turned]}, 'probe[0].rounds[0].gauge'],
		['a stated zero beside turned rounds', {'gauge.zero': 0}, 'gauge.zero'],
		[
			'an uncertainty of a zero that is not stated',
			{'probe.0.rounds': [round], 'gauge.zeroUncertainty': 0.1},
			'gauge.zeroUncertainty',
		],
		['a second closing round', {'probe.0.rounds.2.closing': true}, 'probe[0].rounds[3].closing'],
		['a closing round at a second place', {'probe.1.rounds.1.closing': true}, 'probe[1].rounds[1].closing'],
		['a closing round that is turned', {'probe.0.rounds.3': {...turned, closing: true}}, 'probe[0].rounds[3].closing'],
		[
			'a closing round beside turned ones only',
			{'probe.0.rounds': [turned, {...round, closing: true}]},
			'probe[0].rounds[1].closing',
		],
		['a percent gauge that carries nothing', {'trackingForce.scaleReadingMn': 0}, 'trackingForce.scaleReadingMn'],
		[
			'a guard left out without its mass',
			{'trackingForce.guard': 'left-out', 'trackingForce.guardMassG': undefined},
			'trackingForce.guardMassG',
		],
		[
			'a lever place without a lever',
			{'bias.device': 'magnet', 'bias.readings.0.leverClock': undefined},
			'bias.readings[1].leverClock',
		],
	])('%s', (_what, changes, path) => {
		expect(pathsOf(changed(changes))).toEqual([path]);
	});

	it('impossible geometry names the three lengths', () => {
		const parsed = parseDocument(changed({'probe.1.radiusMm': 449, ...noReadings}));
		expect(parsed).toMatchObject({
			faults: [{id: 'out-of-reach', values: {radiusMm: 449, effectiveLengthMm: 233, pivotDistanceMm: 215.4}}],
		});
	});

	it('is not looked for while the shape is not sound', () => {
		expect(pathsOf(changed({'probe.0.rounds.1.innerLimit': 11, 'gauge.step': 0}))).toEqual(['gauge.step']);
	});
});

describe('any JSON at all', () => {
	it('is refused or accepted, never a crash', () => {
		fc.assert(
			fc.property(fc.jsonValue(), (json) => {
				const parsed = parseDocument(json);
				expect(parsed.ok || parsed.faults.length > 0).toBe(true);
			}),
		);
	});
});
