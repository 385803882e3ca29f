import limits from '../../shared/limits.json' with {type: 'json'};
import {isBelow} from '../measures/compare.js';
import {type ArmGeometry, reaches, reachMm} from '../measures/geometry.js';
import type {Facts} from './facts.js';
import {pivotPlaces} from './pivot-places.js';
import type {Problem} from './step.js';

/** Length and pivot distance, once both are known. */
export function armOf(facts: Facts): ArmGeometry | undefined {
	const effectiveLengthMm = facts.number('arm-length');
	const pivotDistanceMm = facts.number('arm-pivot-distance');
	if (effectiveLengthMm === undefined || pivotDistanceMm === undefined) return;
	return {effectiveLengthMm, pivotDistanceMm};
}

/** Direction of the pivot from the spindle, degrees anticlockwise from the right. */
export const pivotDirectionDeg = (facts: Facts): number =>
	pivotPlaces.find(({id}) => facts.is('arm-pivot-place', id))?.degrees ?? limits.pivotDirectionDeg.value;

export type ProbeRadius = {readonly place: 'inner' | 'outer' | 'extra'; readonly radiusMm: number};

/** The radii at which this check probes, in the order in which they are probed. */
export const probeRadii = (facts: Facts): readonly ProbeRadius[] =>
	(['inner', 'outer', 'extra'] as const).flatMap((place) => {
		const radiusMm = facts.number(`radius-${place}`);
		return radiusMm === undefined ? [] : [{place, radiusMm}];
	});

/** What is wrong with length, pivot distance and radii together, if anything. */
export function reachProblem(facts: Facts, culprits: readonly string[]): Problem | undefined {
	const sentence = unreachable(facts) ?? disordered(facts) ?? nearLinkage(facts, culprits);
	if (sentence === undefined) return;
	return {
		sentence,
		ways: culprits
			.filter((id) => facts.answered(id))
			.map((id) => ({label: `correct: ${names[id] ?? id}`, do: 'ask-again', steps: [id]})),
	};
}

const names: Record<string, string> = {
	'arm-length': 'effective length',
	'arm-pivot-distance': 'pivot distance',
	'radius-inner': 'inner radius',
	'radius-outer': 'outer radius',
	'radius-extra': 'third radius',
	'arm-auto-stop': 'automatic stop',
};

function unreachable(facts: Facts): string | undefined {
	const arm = armOf(facts);
	if (!arm) return;
	const [least, most] = reachMm(arm);
	const range = `from ${least.toFixed(1)} to ${most.toFixed(1)} mm`;
	if (!reaches(arm, 100))
		return `With these lengths the stylus reaches only radii ${range}: it never crosses the record.`;
	const bad = probeRadii(facts).find(({radiusMm}) => !reaches(arm, radiusMm));
	return bad && `The stylus does not reach a radius of ${bad.radiusMm} mm: this arm reaches ${range}.`;
}

function disordered(facts: Facts): string | undefined {
	const inner = facts.number('radius-inner');
	const outer = facts.number('radius-outer');
	if (inner !== undefined && outer !== undefined && !isBelow(inner, outer))
		return `The inner radius (${inner} mm) must be smaller than the outer one (${outer} mm).`;
	const extra = facts.number('radius-extra');
	if (extra !== undefined && (extra === inner || extra === outer))
		return `There is a probe at ${extra} mm already; choose another radius.`;
	return;
}

function nearLinkage(facts: Facts, culprits: readonly string[]): string | undefined {
	const inner = facts.number('radius-inner');
	const least = limits.linkageInnerRadiusMm.value;
	if (!culprits.includes('arm-auto-stop') || !facts.is('arm-auto-stop', 'yes') || inner === undefined) return;
	return isBelow(inner, least)
		? `The automatic stop takes hold of the arm inside ${least} mm; choose ${least} mm or more.`
		: undefined;
}
