import type {RemedyId} from '../procedure/remedies.js';
import type {FindingCode} from './diagnose.js';
import {type Figures, isMeasured} from './figures-types.js';

/** Where the suspects of a finding lead once all of them were looked at. */
type Ends = 'maker' | RemedyId;

/** The suspects of a finding, in the order of what costs least to look at. */
type Suspects = {readonly order: readonly RemedyId[]; readonly end: Ends};

const ofPull = ['bias', 'lead-loop', 'magnet'] as const;
const ofFriction = ['lifter', 'gauge-friction', 'damping', 'touching'] as const;
const ofConstantPull = ['gauge-zero', 'bias', 'level', 'half-force', 'leads', 'leads-off', 'cartridge-weight'] as const;

const table = {
	'off-scale': {order: ['bias', 'level', 'leads'], end: 'maker'},
	moved: {order: ['gauge-foot', 'platter', 'still-deck', 'leads'], end: 'again'},
	'tilt-explains': {order: ['level'], end: 'level'},
	'not-level': {order: ['level'], end: 'level'},
	'constant-pull': {order: ofConstantPull, end: 'maker'},
	'spring-pull': {order: ofPull, end: 'maker'},
	'runaway-pull': {order: ofPull, end: 'maker'},
	friction: {order: ofFriction, end: 'maker'},
	'friction-local': {order: ['along-swing'], end: 'maker'},
	'no-pattern': {order: [], end: 'maker'},
} as const satisfies Partial<Readonly<Record<FindingCode, Suspects>>>;

/** Before any advice to send an arm to its maker: leads dressed anew, guard not touching, deck undisturbed. */
const beforeMaker = 'repeat' satisfies RemedyId;

/** A finding that has suspects. */
export type SuspectedCode = keyof typeof table | 'pull-and-friction';

/** Whether a finding has suspects. */
export const isSuspected = (code: FindingCode): code is SuspectedCode =>
	code === 'pull-and-friction' || Object.hasOwn(table, code);

/** The suspects of friction first, then those of the pull as it shows; one without a pattern is looked at as a constant one. */
function ofBoth(codes: readonly FindingCode[]): Suspects {
	const pull = (['constant-pull', 'spring-pull', 'runaway-pull'] as const).find((code) => codes.includes(code));
	return {order: [...ofFriction, ...table[pull ?? 'constant-pull'].order], end: 'maker'};
}

/** What figures rule out without a look: a level that was read and passes, a zero that is known, a bias on a pull inward. */
function isRuledOut(id: RemedyId, code: SuspectedCode, {level, zero, probe}: Figures): boolean {
	if (id === 'level') return code !== 'tilt-explains' && code !== 'not-level' && level?.passes === true;
	if (id === 'gauge-zero') return zero.source !== 'unchecked';
	if (id !== 'bias' || code === 'off-scale') return false;
	const [strongest] = probe.filter(isMeasured).sort((one, other) => Math.abs(other.pullPct) - Math.abs(one.pullPct));
	return strongest !== undefined && strongest.pullPct < 0;
}

type Case = {
	readonly code: SuspectedCode;
	readonly codes: readonly FindingCode[];
	readonly figures: Figures;
	/** Whether a remedy makes sense for this arm and deck. */
	readonly fits: (id: RemedyId) => boolean;
};

/** The suspects of a finding that figures do not rule out, in order, and where they lead. */
export function suspectsOf({code, codes, figures, fits}: Case): Suspects {
	const {order, end} = code === 'pull-and-friction' ? ofBoth(codes) : table[code];
	const all: readonly RemedyId[] = end === 'maker' ? [...order, beforeMaker] : order;
	return {order: all.filter((id) => fits(id) && !isRuledOut(id, code, figures)), end};
}
