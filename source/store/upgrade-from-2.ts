import {inside, isJson, type Json, jsonAt, listAt} from './json.js';
import {linesLeft, notConfirmed, reasonIds, sentences} from './sentences-of-2.js';

/**
 * The third stored form. What someone went past is kept by the id of the problem with its values, and the reason by its
 * id; why a series was closed the same. In the second form these were English sentences: they are recognised here by the
 * words of then, which never change, and stay beside the id as they were said.
 */

const mnPerGramForce = 9.80665;

const slot = /\{(\w+)(?::([\w|]+))?\}/g;

/** Reads the numbers and words out of a sentence; nothing where it is not of this kind. */
function valuesIn(said: string, template: string): Json | undefined {
	const slots = [...template.matchAll(slot)].map(([, name = '', kind = '']) => ({name, kind}));
	const parts = template.split(/\{[^}]+\}/).map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
	const holes = slots.map(({kind}) =>
		kind.includes('|') ? `(${kind})` : kind === 'gf' ? '(-?[\\d.]+) g' : '(-?[\\d.]+)',
	);
	const found = new RegExp(`^${parts.map((part, index) => part + (holes[index] ?? '')).join('')}$`).exec(said);
	if (!found) return;
	return Object.fromEntries(
		slots.map(({name, kind}, index) => {
			const text = found[index + 1] ?? '';
			if (kind.includes('|')) return [name, text];
			return [name, kind === 'gf' ? Number(text) * mnPerGramForce : Number(text)];
		}),
	);
}

/** The problem that a sentence of then told. One that this table does not have stays a sentence, and holds for nothing. */
function problemOf(said: string): Json {
	const step = notConfirmed[said];
	if (step !== undefined) return {id: 'not-confirmed', values: {step}};
	for (const [list, lines] of Object.entries(linesLeft)) {
		const left = lines.filter(([, sentence]) => said.includes(sentence));
		if (left.length > 0 && left.map(([, sentence]) => sentence).join(' ') === said)
			return {id: 'lines-left', values: {list, lines: left.map(([line]) => line)}};
	}
	for (const [id, sentence] of Object.entries(sentences)) {
		const values = valuesIn(said, sentence);
		if (!values) continue;
		const {way, ...others} = values;
		return {id, values: way === 'less' ? {...others, offPct: -Number(others.offPct)} : others};
	}
	return {id: 'as-said', values: {}};
}

const reasonOf = (said: unknown): Json => {
	const id = reasonIds[String(said)];
	return id === undefined ? {id: 'other', typed: String(said)} : {id};
};

function withProblem({sentence, reason, ...rest}: Json): Json {
	const said = String(sentence);
	return {...rest, problem: problemOf(said), said, reason: reasonOf(reason)};
}

const mapped = (list: readonly unknown[], change: (one: Json) => Json): readonly unknown[] =>
	list.map((one) => (isJson(one) ? change(one) : one));

const answersFrom2 = (answers: Json): Json =>
	Object.fromEntries(
		Object.entries(answers).map(([id, answer]) => [
			id,
			isJson(answer) && isJson(answer.override) ? {...answer, override: withProblem(answer.override)} : answer,
		]),
	);

const roundFrom2 = (round: Json): Json =>
	isJson(round.struck) ? {...round, struck: {...round.struck, reason: reasonOf(round.struck.reason)}} : round;

const placesOff = ['inner', 'outer', 'extra', 'closing'] as const;
const placesOn = ['bias-outer', 'bias-middle', 'bias-inner'] as const;
const roundsFrom2 = (from: Json, places: readonly string[]): Json =>
	Object.fromEntries(
		places
			.filter((place) => from[place] !== undefined)
			.map((place) => [place, mapped(listAt(from, place), roundFrom2)]),
	);

function seriesFrom2(series: Json): Json {
	const {closed} = series;
	return {
		...series,
		...roundsFrom2(series, [...placesOff, ...placesOn]),
		...(series.trials === undefined
			? {}
			: {
					trials: mapped(listAt(series, 'trials'), (trial) => ({
						...trial,
						...roundsFrom2(trial, placesOn),
						answers: answersFrom2(jsonAt(trial, 'answers')),
					})),
				}),
		was: answersFrom2(jsonAt(series, 'was')),
		...(isJson(closed)
			? {closed: {...closed, because: {id: 'as-said', values: {sentence: String(closed.because)}}}}
			: {}),
	};
}

const checkFrom2 = (check: Json): Json => ({
	...check,
	answers: answersFrom2(jsonAt(check, 'answers')),
	series: mapped(listAt(check, 'series'), seriesFrom2),
	overrides: mapped(listAt(check, 'overrides'), withProblem),
});

const remarkFrom2 = (remark: Json): Json => ({
	...remark,
	...(isJson(remark.putBack) ? {putBack: answersFrom2(remark.putBack)} : {}),
	...(remark.overrides === undefined ? {} : {overrides: mapped(listAt(remark, 'overrides'), withProblem)}),
});

/** By kind of file, what of it holds what. */
const upgrades: Readonly<Record<string, (body: Json) => Json>> = {
	'armdrift-check': (body) => inside(body, 'record', (record) => inside(record, 'check', checkFrom2)),
	'armdrift-draft': (body) => inside(body, 'content', checkFrom2),
	'armdrift-remark': (body) => inside(body, 'remark', remarkFrom2),
};

/** A document of the second stored form as one of the third. Pure; the file on disk is not touched. */
export const upgradeFrom2 = (body: Json): Json => upgrades[String(body.kind)]?.(body) ?? body;
