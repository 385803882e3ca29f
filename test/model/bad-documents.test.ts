import {describe, expect, test} from 'vitest';
import {parseDocument} from '../../source/results/document.js';
import {faultText} from '../../source/words/documents.js';
import {badShapes} from './bad-shapes.js';
import {type Edits, edited, gone, told} from './edited.js';
import example from './printed-example.json' with {type: 'json'};

const sound = example.document;

const faultsOf = (document: unknown): {path: string; sentence: string}[] => {
	const parsed = parseDocument(document);
	return parsed.ok ? [] : parsed.faults.map((fault) => ({path: fault.path, sentence: faultText(fault)}));
};

const pathsOf = (edits: Edits): string[] => faultsOf(edited(sound, edits)).map(({path}) => path);

const back = {innerLimit: -2, outerLimit: -5, gauge: 'turned'};
const asUsed = {innerLimit: 1.5, outerLimit: 5};
const another = (place: string, radiusMm: number): Edits => ({'probe[2]': {place, radiusMm, rounds: [asUsed]}});
const withoutTurned: Edits = {'probe[0].rounds': [asUsed]};

const good: [name: string, edits: Edits][] = [
	['as it stands', {}],
	['the required keys alone', {level: gone, clearance: gone, cartridge: gone, limits: gone, bias: gone}],
	['parts with no key of their own required', {cartridge: {}, limits: {}, bias: {device: 'none'}}],
	['a stated zero and no turned round', {...withoutTurned, 'gauge.zero': -0.2, 'gauge.zeroUncertainty': 0}],
	['a floated arm in mN', {'gauge.unit': 'mN', 'trackingForce.scaleReadingMn': 0}],
	['a floated arm in gf', {'gauge.unit': 'gf', 'trackingForce.scaleReadingMn': 0}],
	['tilts a little under 45°', {'level.leftRightDeg': [44.9, -44.9], 'level.frontBackDeg': [44.9]}],
	['zeros where zero is allowed', {'clearance.stylusMm': 0, 'gauge.nudge': 0, 'level.stepDeg': 0}],
	['good and usable the same', {limits: {pullGoodPct: 3, pullUsablePct: 3, bandGoodPct: 6}}],
	['both limits of a round the same', {'probe[1].rounds[0]': {innerLimit: 2, outerLimit: 2}}],
	['both limits of a turned round the same', {'probe[0].rounds[0].innerLimit': -8}],
	['the least drag', {'bias.effectiveDrag': 0.15}],
	['the most drag', {'bias.effectiveDrag': 0.6}],
	['the first and the last hour', {'bias.readings[0].leverClock': '1:00', 'bias.readings[1].leverClock': '12:59'}],
	['just inside the reach', {'probe[0].radiusMm': 17.62, 'probe[1].radiusMm': 448.38}],
	['an other radius', another('other', 100)],
];

const everyLength = (radius: string): RegExp =>
	new RegExp(`^(?=.*233)(?=.*215[.]4)(?=.*${radius.replace('.', '[.]')})`);

const unreachable: [path: string, radius: number][] = [
	['probe[0].radiusMm', 17.5],
	['probe[0].radiusMm', 17.605],
	['probe[0].radiusMm', 17.61],
	['probe[1].radiusMm', 448.395],
	['probe[1].radiusMm', 500],
	['bias.readings[1].radiusMm', 12],
	['bias.readings[0].radiusMm', 450.5],
];

const across: [name: string, edits: Edits, path: string | RegExp][] = [
	[
		'guard left out and its mass missing',
		{'trackingForce.guard': 'left-out', 'trackingForce.guardMassG': gone},
		'trackingForce.guardMassG',
	],
	[
		'a scale below zero in mN',
		{'gauge.unit': 'mN', 'trackingForce.scaleReadingMn': -1},
		'trackingForce.scaleReadingMn',
	],
	['inner limit above outer', {'probe[0].rounds[1].innerLimit': 9}, 'probe[0].rounds[1].innerLimit'],
	['turned inner limit below outer', {'probe[0].rounds[0].innerLimit': -9}, 'probe[0].rounds[0].innerLimit'],
	[
		'inner limit above outer with the bias on',
		{'bias.readings[1].rounds[0].outerLimit': 6},
		'bias.readings[1].rounds[0].innerLimit',
	],
	['turned rounds at a second place', {'probe[1].rounds[1]': back}, 'probe[1].rounds[1].gauge'],
	['turned rounds alone at a place', {'probe[0].rounds': [back]}, 'probe[0].rounds[0].gauge'],
	['turned rounds beside a stated zero', {'gauge.zero': 0.1}, 'gauge.zero'],
	['turned rounds beside a stated zero of nothing', {'gauge.zero': 0}, 'gauge.zero'],
	['a second closing round at the place', {'probe[0].rounds[2].closing': true}, 'probe[0].rounds[3].closing'],
	['a second closing round elsewhere', {'probe[1].rounds[2].closing': true}, 'probe[1].rounds[2].closing'],
	[
		'a turned closing round',
		{'probe[0].rounds[3].closing': gone, 'probe[0].rounds[0].closing': true},
		'probe[0].rounds[0].closing',
	],
	[
		'a closing round alone at its place',
		{'probe[0].rounds[3].closing': gone, 'probe[1].rounds': [{...asUsed, closing: true}]},
		'probe[1].rounds[0].closing',
	],
	[
		'a closing round beside a turned one only',
		{'probe[0].rounds': [back, {...asUsed, closing: true}]},
		'probe[0].rounds[1].closing',
	],
	['two inner places', another('inner', 60), 'probe[2].place'],
	['two outer places', another('outer', 140), 'probe[2].place'],
	['no outer place', {'probe[1].place': 'other'}, 'probe'],
	['no inner place', {'probe[0].place': 'other'}, 'probe'],
	['inner radius above outer', {'probe[0].radiusMm': 140}, /^probe\[[01]\]\.radiusMm$/],
	['inner radius the same as outer', {'probe[0].radiusMm': 136}, /^probe\[[01]\]\.radiusMm$/],
	['an other radius the same as the inner', another('other', 68), /^probe\[[02]\]\.radiusMm$/],
	['two bias radii the same', {'bias.readings[1].radiusMm': 136}, /^bias\.readings\[[01]\]\.radiusMm$/],
	['pull limits in the wrong order', {'limits.pullUsablePct': 1.9}, 'limits.pullUsablePct'],
	['band limits in the wrong order', {'limits.bandUsablePct': 2.9}, 'limits.bandUsablePct'],
	['good pull above the usable one that is not given', {limits: {pullGoodPct: 4.5}}, 'limits.pullUsablePct'],
	['good band above the usable one that is not given', {limits: {bandGoodPct: 6.5}}, 'limits.bandUsablePct'],
	['usable pull below the good one that is not given', {limits: {pullUsablePct: 1}}, 'limits.pullUsablePct'],
	['a lever’s clock with another device', {'bias.device': 'spring'}, 'bias.readings[0].leverClock'],
];

describe('a sound document', () => {
	test.each(good)('has no fault: %s', (_name, edits) => {
		expect(faultsOf(edited(sound, edits))).toEqual([]);
	});
});

describe('a fault is told at the path of the key that is wrong', () => {
	test.each(badShapes.map(([path, value]) => [path, told(value), value] as const))('%s: %s', (path, _told, value) => {
		expect(pathsOf({[path]: value})[0]).toBe(path);
	});

	test.each(across)('%s', (_name, edits, path) => {
		const [first] = pathsOf(edits);
		if (typeof path === 'string') {
			expect(first).toBe(path);
		} else {
			expect(first).toMatch(path);
		}
	});

	test.each(unreachable)('%s %d, out of reach, with all three lengths', (path, radius) => {
		const [first] = faultsOf(edited(sound, {[path]: radius}));
		expect(first?.path).toBe(path);
		expect(first?.sentence).toMatch(everyLength(String(radius)));
	});

	test('and each of several faults has its own', () => {
		const paths = pathsOf({'arm.loading': 'magnet', 'gauge.topOfScale': gone, 'probe[1].rounds[0].innerLimit': '1'});
		expect(paths).toEqual(expect.arrayContaining(['arm.loading', 'gauge.topOfScale', 'probe[1].rounds[0].innerLimit']));
		expect(paths).toHaveLength(3);
	});

	test.each([null, [], 'text', 7])('and %j is no document at all', (document) => {
		expect(parseDocument(document).ok).toBe(false);
	});
});
