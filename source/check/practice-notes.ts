import * as z from 'zod/mini';

/** The state of an invented deck: what was done to it by hand, in order, and the weight on its bias device. */
const deckState = z.looseObject({done: z.array(z.string()), biasWeightG: z.optional(z.number())});

/** A reading of a practice check, and how it came about. */
const readingNote = z.looseObject({
	/** Step that asked for it. */
	step: z.string(),
	/** When it was typed: the reading itself has the same time. */
	at: z.string(),
	/** Which of the limits, and of which round, counted from 0. */
	which: z.enum(['innerLimit', 'outerLimit']),
	index: z.number(),
	radiusMm: z.number(),
	isTurned: z.boolean(),
	/** As typed, in percent and in the sign of the gauge. */
	readingPct: z.number(),
	deck: deckState,
	nudges: z.number(),
	/** Nudges on an arm that still moved, or had only just come to rest. */
	hurried: z.number(),
	/** How long the arm was at rest with this reading, in ms; null: it was never shown at rest. */
	restMs: z.nullable(z.number()),
});

/** What is kept beside the answers of a check on an invented arm. */
export const practiceNotes = z.looseObject({
	/** Which invented arm. */
	arm: z.string(),
	/** Its name is not told. */
	isHidden: z.optional(z.literal(true)),
	/** The same seed gives the same gauge trembling and the same draught. */
	seed: z.number(),
	/** Everything before the probe was done by somebody else. */
	isPrepared: z.boolean(),
	/** How many rounds are asked for at each radius, where it is fewer than usual. */
	roundsEach: z.optional(z.number()),
	deck: deckState,
	readings: z.array(readingNote),
	/** The hidden truth was looked at. */
	isRevealed: z.boolean(),
});

export type DeckState = z.infer<typeof deckState>;
export type ReadingNote = z.infer<typeof readingNote>;
export type PracticeNotes = z.infer<typeof practiceNotes>;
