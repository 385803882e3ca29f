import type {LessonArm} from '../practice/arms.js';
import {pivotPlaces} from '../procedure/pivot-places.js';

const pivotPlaceOf = (directionDeg: number): string =>
	pivotPlaces.find(({degrees}) => degrees === directionDeg)?.id ?? 'right-rear';

/**
 * What is known of an invented arm, its cartridge and the tools before the check begins, as a technician would type it; a
 * choice by its id. All of it is invented.
 */
export function knownOf({spec, bench, wireStiffness}: LessonArm, name: string): Readonly<Record<string, string>> {
	const {geometry, gauge} = spec;
	return {
		'arm-name': name,
		'arm-length': String(geometry.effectiveLengthMm),
		'arm-pivot-distance': String(geometry.pivotDistanceMm),
		'arm-pivot-place': pivotPlaceOf(spec.pivotDirectionDeg),
		'arm-bearing': 'gimbal',
		'arm-gravity-centre': 'near',
		'arm-loading': spec.loading,
		'arm-auto-stop': 'no',
		'arm-wire-path': 'free-loop',
		'arm-wire-stiffness': wireStiffness,
		'arm-bias-device': spec.bias?.device.kind ?? 'none',
		'arm-damping': spec.damping ? 'yes' : 'no',
		'deck-sprung': 'no',
		'cartridge-name': 'invented cartridge',
		'playing-force': `${spec.playingMn} mN`,
		'force-low': '15 mN',
		'force-high': '22 mN',
		'guard-mass': String(spec.guardMassG),
		'guard-depth': String(bench.clearance.guardDepthMm),
		'tools-name': 'invented bench',
		'gauge-unit': 'percent',
		'gauge-step': String(gauge.stepPct),
		'gauge-top': String(gauge.topPct),
		'gauge-sign': 'arm-out',
		'gauge-turns': 'inner',
		'gauge-scale-uncertainty': String(bench.gaugeScalePct),
		'gauge-nudge': String(gauge.stepPct),
		'scale-step': `${bench.scaleStepMn} mN`,
		'scale-uncertainty': `${bench.scaleStepMn} mN`,
		'level-step': String(bench.level.stepDeg),
	};
}
