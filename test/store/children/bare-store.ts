import * as z from 'zod/mini';
import {openStore} from '../../../source/store/open-store.js';

const schema = z.looseObject({id: z.string(), answer: z.number()});
const valueSchema = z.looseObject({answer: z.number()});

const codec = <T>(one: z.ZodMiniType<T>) => ({
	parse(json: unknown) {
		const parsed = one.safeParse(json);
		return parsed.success
			? {ok: true as const, value: parsed.data}
			: {ok: false as const, misfit: {at: '', why: 'wrong shape'}};
	},
});

export const sample = (id: string, answer: number, filler = '') => ({id, answer, filler});

/** A store of invented content for a process of its own. */
export const openBareStore = (dataDir: string) =>
	openStore({
		dataDir,
		check: codec(schema),
		record: codec(schema),
		remark: codec(valueSchema),
		profiles: codec(valueSchema),
		settings: codec(valueSchema),
		idOf: ({id}) => id,
		summaryOf: ({id}) => ({
			id,
			date: '2026-11-25',
			startedAt: '2026-11-25T09:00:00.000Z',
			arm: 'invented',
			outcome: 'complete',
			verdict: null,
			atWorst: null,
			probe: [],
			measuredWith: null,
			doneSince: [],
			doneNote: null,
			tookMinutes: 31,
			nextDate: '2027-05-25',
		}),
		now: () => new Date(),
	});
