import {inside, isJson, type Json, jsonAt} from './json.js';

/**
 * The fourth stored form. More than one thing may have been done to an arm since its last check, so that answer is a list;
 * in the third form it was one word.
 */

function checkFrom3(check: Json): Json {
	const answers = jsonAt(check, 'answers');
	const done = answers['done-since'];
	if (!isJson(done) || typeof done.value !== 'string') return check;
	return {...check, answers: {...answers, 'done-since': {...done, value: [done.value]}}};
}

/** By kind of file, what of it holds what. */
const upgrades: Readonly<Record<string, (body: Json) => Json>> = {
	'armdrift-check': (body) => inside(body, 'record', (record) => inside(record, 'check', checkFrom3)),
	'armdrift-draft': (body) => inside(body, 'content', checkFrom3),
	// Its rows have other columns: it is made anew from the checks.
	'armdrift-index': (body) => ({...body, rows: []}),
};

/** A document of the third stored form as one of the fourth. Pure; the file on disk is not touched. */
export const upgradeFrom3 = (body: Json): Json => upgrades[String(body.kind)]?.(body) ?? body;
