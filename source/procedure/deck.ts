/** How arm, deck and gauge stand: what the hands must know at every moment. */
export type Deck = {
	/** Locked in its rest (or tied there where there is no lock), in its rest, or on the gauge over the platter. */
	readonly arm: 'locked' | 'in-rest' | 'on-gauge';
	readonly stylus: 'covered' | 'bare';
	readonly mat: 'on' | 'off';
	/** Damping that can be taken out; 'none' where the arm has none. */
	readonly damping: 'none' | 'in' | 'out';
	readonly bias: 'none' | 'as-found' | 'off' | 'on' | 'set';
	readonly gauge: 'away' | 'as-used' | 'turned';
};

export const deckParts = [
	'arm',
	'stylus',
	'mat',
	'bias',
	'damping',
	'gauge',
] as const satisfies readonly (keyof Deck)[];

/** The states of each part in which a step may be asked; a part that is not named may be in any. */
export type Finds = {readonly [Part in keyof Deck]?: readonly Deck[Part][]};

/** A deck before anything was done to it: nothing is known to be locked or covered. */
export const deckAsFound: Deck = {
	arm: 'in-rest',
	stylus: 'bare',
	mat: 'on',
	damping: 'none',
	bias: 'none',
	gauge: 'away',
};

/** Arm locked in its rest: whatever is done beside it, nothing swings. */
export const armLocked = {arm: ['locked']} as const satisfies Finds;

/** What a hand does first where arm and gauge do not stand as a step wants them. Everything else has a step of its own. */
export type MoveId = 'lock-arm' | 'take-gauge-away';

const isFound = <Part extends keyof Deck>(deck: Deck, finds: Finds, part: Part): boolean =>
	finds[part]?.includes(deck[part]) ?? true;

/** The moves that lead from how the deck stands to how a step wants it, in the order in which they are made. */
export function movesTo(deck: Deck, finds: Finds): readonly MoveId[] {
	const moves: MoveId[] = [];
	if (!isFound(deck, finds, 'arm')) moves.push('lock-arm');
	if (!isFound(deck, finds, 'gauge') && finds.gauge?.includes('away')) moves.push('take-gauge-away');
	return moves;
}

/** The parts that stand otherwise than a step wants them and that no move puts right: another step comes first. */
export function obstacles(deck: Deck, finds: Finds): readonly (keyof Deck)[] {
	const byStep = [
		'stylus',
		'mat',
		'damping',
		'bias',
		...(finds.gauge?.includes('away') ? [] : ['gauge' as const]),
	] as const;
	return byStep.filter((part) => !isFound(deck, finds, part));
}
