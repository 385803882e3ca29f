import {procedure} from '../procedure/index.js';
import type {FinishedCheck} from './record.js';

/** A filed check without its customer and the shop, for whoever is neither. */
export function withoutCustomer(record: FinishedCheck): FinishedCheck {
	const {shop: _shop, answers, ...check} = record.check;
	const isPrivate = new Set<string>(procedure.flatMap((step) => (step.isPrivate ? [step.id] : [])));
	const others = Object.entries(answers).filter(([id]) => !isPrivate.has(id));
	return {...record, check: {...check, answers: Object.fromEntries(others)}};
}
