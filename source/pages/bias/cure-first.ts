import {hasBias} from '../../procedure/bias-devices.js';
import type {Facts} from '../../procedure/facts.js';
import type {Finding, FindingCode} from '../../results/diagnose.js';
import {words} from '../../words/index.js';
import {line, type Shown} from '../shown-lines.js';

/** Findings whose cure changes the arm's own pull or its friction: a bias set before has to be set once more after it. */
const cures: readonly FindingCode[] = [
	'off-scale',
	'moved',
	'tilt-explains',
	'not-level',
	'pull-and-friction',
	'constant-pull',
	'spring-pull',
	'runaway-pull',
	'friction',
	'friction-local',
	'no-pattern',
];

/** Whether findings name something to be cured before the bias is set; not where bias was seen to carry the pull. */
export const namesCure = (findings: readonly Pick<Finding, 'code'>[]): boolean =>
	findings.some(({code}) => cures.includes(code)) && !findings.some(({code}) => code === 'playable-with-bias');

/** What stands beside the offer to set the bias where something is to be cured first. */
export const biasLater = (findings: readonly Finding[], facts: Facts): Shown[] =>
	hasBias(facts) && namesCure(findings) ? [line(words.bias.advice.cureFirst, 'warn')] : [];
