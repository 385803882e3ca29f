import {hasBias} from '../../procedure/bias-devices.js';
import type {Facts} from '../../procedure/facts.js';
import {type FindingCode, namesCure} from '../../results/diagnose.js';
import {words} from '../../words/index.js';
import {line, type Shown} from '../shown-lines.js';

/** What stands beside the offer to set the bias where something is to be cured first. */
export const biasLater = (findings: readonly {readonly code: FindingCode}[], facts: Facts): Shown[] =>
	hasBias(facts) && namesCure(findings) ? [line(words.bias.advice.cureFirst, 'warn')] : [];
