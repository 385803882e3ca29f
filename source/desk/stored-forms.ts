import * as z from 'zod/mini';
import {checkSchema} from '../check/check.js';
import type {Settings} from '../procedure/settings.js';
import {profilesSchema} from '../results/profiles.js';
import {recordSchema, summaryOf} from '../results/record.js';
import type {Codec} from '../store/context.js';
import {openStore} from '../store/open-store.js';
import {storeText} from '../words/store-text.js';

/** What a schema wanted, as an id: its own, or the kind of value; empty where no such word says it. */
const wantedBy = (issue: z.core.$ZodIssue): string => {
	if (issue.message === 'instant' || issue.message === 'finite-number') return issue.message;
	if (issue.code === 'invalid_type') return issue.expected;
	return issue.code === 'too_small' && issue.origin === 'number' && !issue.inclusive ? 'positive' : '';
};

/** Turns a schema into what the store asks of its contents. */
const codec = <S extends z.core.$ZodType>(schema: S): Codec<z.output<S>> => ({
	parse: (json) => {
		const parsed = z.safeParse(schema, json);
		if (parsed.success) return {ok: true, value: parsed.data};
		const [issue] = parsed.error.issues;
		return {ok: false, misfit: {at: issue?.path.map(String).join('.') ?? '', why: issue ? wantedBy(issue) : ''}};
	},
});

const aboveZero = z.number().check(z.positive());

const settingsSchema = z.looseObject({
	pullGoodPct: aboveZero,
	pullUsablePct: aboveZero,
	bandGoodPct: aboveZero,
	bandUsablePct: aboveZero,
	settleSeconds: aboveZero,
	setAnew: z.boolean(),
	bell: z.boolean(),
	// Files of earlier versions lack it.
	brisk: z._default(z.boolean(), false),
	shop: z._default(z.string(), ''),
} satisfies Record<keyof Settings, z.core.$ZodType>);

export const remarkSchema = z.looseObject({
	/** When the deck was ready to play again. */
	putBackAt: z.optional(z.string()),
	putBack: z.optional(checkSchema.shape.answers),
	overrides: z.optional(checkSchema.shape.overrides),
	/** Why the check does not count; it stays on file. */
	void: z.optional(z.looseObject({reason: z.string(), at: z.string()})),
	/** Marks of that kind that were taken back since. */
	formerVoids: z.optional(z.array(z.looseObject({reason: z.string(), at: z.string(), takenBackAt: z.string()}))),
});
export type Remark = z.output<typeof remarkSchema>;

const profileList = z.looseObject({profiles: profilesSchema});
export type StoredProfiles = z.output<typeof profileList>;
export type StoredSettings = z.output<typeof settingsSchema>;

/** What each file of the data folder holds. Unknown fields are kept: a later version may have put them there. */
export const storedForms = {
	check: codec(checkSchema),
	record: codec(recordSchema),
	/** Later facts beside a filed check. */
	remark: codec(remarkSchema),
	profiles: codec(profileList),
	settings: codec(settingsSchema),
};

/** The store with the forms of this program in it. @param onNotice takes sentences that come up in the middle of a save */
export const storeOf = (dataDir: string, now: () => Date, onNotice: (sentence: string) => void) =>
	openStore({
		dataDir,
		...storedForms,
		idOf: (check) => check.id,
		isReopened: (check) => check.reopened === true,
		summaryOf,
		now,
		onNotice: (fault) => onNotice(storeText(fault)),
	});
export type CheckStore = ReturnType<typeof storeOf>;
