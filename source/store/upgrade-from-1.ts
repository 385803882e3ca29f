import {inside, isJson, type Json, jsonAt, listAt} from './json.js';

/**
 * The second stored form. A round may be taken with the gauge turned, and a check says whether the gauge was set anew for
 * each round: before, its zero was found by two rounds of their own, and it stayed where it was. The wires of an arm got
 * other words. What was issued keeps its numbers; `form` says that its ± do not hold what setting up makes of a pull.
 */

/** The end of the scale of a percent gauge, where the first form left it out. */
const scaleEndPct = 16;

const given = (answer: unknown): unknown => (isJson(answer) ? answer.value : undefined);

/** Choices that are called otherwise by now: by step, the old value, the new one and what is printed of it. */
const renamed: readonly (readonly [step: string, from: string, to: string, typed: string])[] = [
	['arm-wire-path', 'exposed-loop', 'free-loop', 'in a free loop'],
	['arm-wire-stiffness', 'supple', 'limp', 'limp, hangs by itself'],
];

function withNewWords(answers: Json): Json {
	const words = renamed.flatMap(([step, from, to, typed]) => {
		const answer = answers[step];
		return isJson(answer) && answer.value === from ? [[step, {...answer, value: to, typed}] as const] : [];
	});
	return {...answers, ...Object.fromEntries(words)};
}

const zeroSteps = ['zero-first-inner', 'zero-first-outer', 'zero-turned-inner', 'zero-turned-outer'] as const;

/** Both rounds of the zero check of a series, the second with the gauge turned; none where they belong to another series. */
function zeroRounds(series: Json, answers: Json): readonly Json[] {
	const then: Json = {...answers, ...jsonAt(series, 'was')};
	const [start, end] = [String(series.openedAt), String(jsonAt(series, 'closed').at ?? '9999')];
	const readings = zeroSteps.map((id) => then[id]);
	const isOfSeries = (reading: unknown): reading is Json => {
		if (!isJson(reading) || typeof reading.value !== 'number') return false;
		const ms = Date.parse(String(reading.at));
		return ms >= Date.parse(start) && !(ms > Date.parse(end));
	};
	const [inner, outer, turnedInner, turnedOuter] = readings
		.filter(isOfSeries)
		.map(({typed, value, at}) => ({typed, value, at}));
	if (given(then['zero-way']) !== 'turn' || turnedOuter === undefined) return [];
	return [
		{innerLimit: inner, outerLimit: outer},
		{gauge: 'turned', innerLimit: turnedInner, outerLimit: turnedOuter},
	];
}

const withZeroRounds = (series: Json, answers: Json): Json => ({
	...series,
	inner: [...zeroRounds(series, answers), ...listAt(series, 'inner')],
});

/** The answers of the zero check as what is asked now: whether the gauge can be turned. */
function withGauge(answers: Json, hasReadings: boolean): Json {
	const way = answers['zero-way'];
	const top =
		hasReadings && answers['gauge-top'] === undefined && (given(answers['gauge-unit']) ?? 'percent') === 'percent'
			? {'gauge-top': {...jsonAt(answers, 'gauge-step'), typed: `${scaleEndPct} %`, value: scaleEndPct}}
			: {};
	if (!isJson(way)) return {...answers, ...top};
	if (way.value === 'turn') return {...answers, ...top, 'gauge-turns': {...way, value: 'inner'}};
	const notRead = {typed: '', value: null, at: way.at};
	return {
		...answers,
		...top,
		'gauge-turns': {...way, value: 'no'},
		'zero-free-before': notRead,
		'zero-free-after': notRead,
	};
}

/** Notes of how readings came about: those of the zero check are rounds at the inner radius now. */
function practiceFrom1(practice: Json, moved: number): Json {
	const readings = listAt(practice, 'readings').map((note) => {
		if (!isJson(note)) return note;
		const [, round] = /^zero-(first|turned)-/.exec(String(note.step)) ?? [];
		if (round !== undefined) return {...note, step: 'probe-inner', index: round === 'first' ? 0 : 1};
		return note.step === 'probe-inner' && typeof note.index === 'number' ? {...note, index: note.index + moved} : note;
	});
	return {...practice, readings};
}

function checkFrom1(check: Json): Json {
	const answers = withNewWords(jsonAt(check, 'answers'));
	const practice = check.practice;
	// A first try takes one round at each radius, and none with the gauge turned.
	const isOnce = isJson(practice) && practice.roundsEach === 1;
	const old = listAt(check, 'series').filter(isJson);
	const series = isOnce ? old : old.map((one) => withZeroRounds(one, answers));
	const moved = listAt(series.at(-1) ?? {}, 'inner').length - listAt(old.at(-1) ?? {}, 'inner').length;
	const hasReadings = series.some((one) => listAt(one, 'inner').length > 0);
	return {
		...check,
		setAnew: false,
		answers: withGauge(answers, hasReadings),
		series: series.map((one) => ({...one, was: withNewWords(jsonAt(one, 'was'))})),
		...(isJson(practice) ? {practice: practiceFrom1(practice, moved)} : {}),
	};
}

/** The zero as it was taken off the readings then. */
function zeroThen(check: Json): Json {
	const answers = jsonAt(check, 'answers');
	const values = zeroSteps.map((id) => given(answers[id])).filter((value) => typeof value === 'number');
	if (given(answers['zero-way']) !== 'turn' || values.length < zeroSteps.length)
		return {source: 'unchecked', zero: null, zeroUncertainty: null};
	return {source: 'turned', zero: values.reduce((sum, value) => sum + value, 0) / values.length, zeroUncertainty: null};
}

const ownPull = ({pullPct, tiltSharePct}: Json): number | null =>
	typeof pullPct === 'number' && typeof tiltSharePct === 'number' ? pullPct - tiltSharePct : null;

const issuedFrom1 = (issued: Json, check: Json): Json => {
	const figures = jsonAt(issued, 'figures');
	const probe = listAt(figures, 'probe').map((one) => (isJson(one) ? {...one, ownPullPct: ownPull(one)} : one));
	return {...issued, form: 1, figures: {...figures, zero: zeroThen(check), closing: null, probe}};
};

function recordFrom1(record: Json): Json {
	const check = jsonAt(record, 'check');
	const issued = record.issued;
	return {...record, check: checkFrom1(check), ...(isJson(issued) ? {issued: issuedFrom1(issued, check)} : {})};
}

const profileFrom1 = (profile: unknown): unknown =>
	isJson(profile) ? {...profile, answers: withNewWords(jsonAt(profile, 'answers'))} : profile;

/** By kind of file, what of it holds what. */
const upgrades: Readonly<Record<string, (body: Json) => Json>> = {
	'armdrift-check': (body) => ({...body, record: recordFrom1(jsonAt(body, 'record'))}),
	'armdrift-draft': (body) => inside(body, 'content', checkFrom1),
	'armdrift-profiles': (body) =>
		inside(body, 'content', (all) => ({...all, profiles: listAt(all, 'profiles').map(profileFrom1)})),
	'armdrift-settings': (body) => inside(body, 'content', (settings) => ({...settings, setAnew: true})),
	// Its rows have other columns: it is made anew from the checks.
	'armdrift-index': (body) => ({...body, rows: []}),
};

/** A document of the first stored form as one of the second. Pure; the file on disk is not touched. */
export const upgradeFrom1 = (body: Json): Json => upgrades[String(body.kind)]?.(body) ?? body;
