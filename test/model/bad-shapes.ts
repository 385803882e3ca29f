import {gone} from './edited.js';

const required = [
	'arm',
	'arm.effectiveLengthMm',
	'arm.pivotDistanceMm',
	'arm.loading',
	'gauge',
	'gauge.unit',
	'gauge.step',
	'gauge.topOfScale',
	'trackingForce',
	'trackingForce.playingMn',
	'trackingForce.scaleReadingMn',
	'trackingForce.guard',
	'level.stepDeg',
	'level.leftRightDeg',
	'level.frontBackDeg',
	'clearance.stylusMm',
	'probe',
	'probe[0].place',
	'probe[0].radiusMm',
	'probe[1].rounds',
	'probe[0].rounds[1].innerLimit',
	'probe[1].rounds[2].outerLimit',
	'bias.device',
	'bias.readings[0].radiusMm',
	'bias.readings[1].rounds',
	'bias.readings[0].rounds[0].innerLimit',
	'bias.readings[1].rounds[0].outerLimit',
];

const aboveZero = [
	'arm.effectiveLengthMm',
	'arm.pivotDistanceMm',
	'gauge.step',
	'gauge.topOfScale',
	'trackingForce.playingMn',
	'trackingForce.scaleReadingMn',
	'cartridge.staticComplianceUmPerMn',
	'cartridge.cantileverMm',
	'probe[0].radiusMm',
	'bias.readings[1].radiusMm',
	'limits.pullGoodPct',
	'limits.pullUsablePct',
	'limits.bandGoodPct',
	'limits.bandUsablePct',
];

const zeroOrMore = [
	'gauge.relativeUncertaintyPct',
	'gauge.nudge',
	'trackingForce.guardMassG',
	'trackingForce.relativeUncertaintyPct',
	'level.stepDeg',
	'clearance.stylusMm',
	'clearance.matRemovedMm',
	'clearance.guardDepthMm',
];

const numbers = [
	...aboveZero,
	...zeroOrMore,
	'arm.pivotDirectionDeg',
	'level.leftRightDeg[0]',
	'level.frontBackDeg[1]',
	'probe[0].rounds[1].innerLimit',
	'probe[1].rounds[0].outerLimit',
	'bias.effectiveDrag',
	'bias.readings[0].rounds[0].outerLimit',
];

const holders = [
	'arm.',
	'gauge.',
	'trackingForce.',
	'level.',
	'clearance.',
	'cartridge.',
	'probe[1].',
	'probe[0].rounds[2].',
	'limits.',
	'bias.',
	'bias.readings[0].',
	'bias.readings[1].rounds[0].',
];

const round = {innerLimit: 1, outerLimit: 2};

const others: [path: string, values: unknown[]][] = [
	['version', [1]],
	['arm', ['gravity', null, []]],
	['arm.loading', ['magnet', '', 1]],
	['gauge.unit', ['ounce', 'mn', null]],
	['gauge.setAnew', ['yes', 1, null]],
	['trackingForce.guard', ['on', true]],
	['level.leftRightDeg', [[], [0.1, 0.1, 0.1], 0.1]],
	['level.frontBackDeg', [[], [0, 0, 0]]],
	['level.leftRightDeg[0]', [45, -45, 60]],
	['level.frontBackDeg[1]', [45, -90]],
	['probe', [[], {}]],
	['probe[0].place', ['middle', 'Inner']],
	['probe[0].rounds', [[], round]],
	['probe[0].rounds[1]', [[3, 8]]],
	['probe[0].rounds[3].closing', [false, 'yes', 1]],
	['probe[0].rounds[0].gauge', ['as-used', 'used', true]],
	['bias.device', ['string', null]],
	['bias.effectiveDrag', [0.149, 0.601, 0, -0.3]],
	['bias.readings', [[], [{radiusMm: 100, rounds: [round]}]]],
	['bias.readings[0].rounds', [[]]],
	['bias.readings[0].rounds[0].closing', [true]],
	['bias.readings[0].rounds[0].gauge', ['turned']],
	['bias.readings[1].leverClock', ['0:30', '13:00', '8:60', '8:5', '8.30', '8:', 'half past eight', '', 830]],
];

const notNumbers = ['1', null, true, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];

/** One key broken, and told at that very key. */
export const badShapes: [path: string, value: unknown][] = [
	...required.map((path): [string, unknown] => [path, gone]),
	...holders.map((holder): [string, unknown] => [`${holder}colour`, 'red']),
	...aboveZero.flatMap((path) => [0, -1].map((value): [string, unknown] => [path, value])),
	...zeroOrMore.map((path): [string, unknown] => [path, -0.1]),
	...numbers.flatMap((path) => notNumbers.map((value): [string, unknown] => [path, value])),
	...others.flatMap(([path, values]) => values.map((value): [string, unknown] => [path, value])),
];
