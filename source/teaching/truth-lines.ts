import type {Check} from '../check/check.js';
import type {PracticeNotes, ReadingNote} from '../check/practice-notes.js';
import {chosenTrial} from '../check/trials.js';
import {isAbove} from '../measures/compare.js';
import {line, type Shown} from '../pages/shown-lines.js';
import {truthOf} from '../practice/truth.js';
import {placeOfRounds} from '../procedure/index.js';
import {places as allPlaces, isOnPlace, stepOfRounds} from '../procedure/places.js';
import {seriesThatCounts} from '../results/document-of-check.js';
import type {RadiusFigures} from '../results/figures-types.js';
import type {Issued} from '../results/issued.js';
import {practiceWords} from '../words/practice.js';
import type {PracticeExtent} from '../workbench.js';
import {adviceLines} from './advice.js';
import {lessonFor, lessonOf, specOn} from './deck.js';
import {biasCompared, type Compared, type FoundAndHidden, heldOf, madeOf, truthTable} from './truth-table.js';

const said = practiceWords.truth;

/** The hidden truth of an invented arm beside what was found of it, and what to do better; empty for a real check. */
export function truthLines(check: Check, issued: Issued | null): readonly Shown[] {
	const {practice} = check;
	if (!practice) return [];
	const lesson = lessonFor(practice);
	if (!lesson) return [line(said.unknownArm(practice), 'warn')];
	const notes = standingReadings(check);
	const places = (issued?.figures.probe ?? []).flatMap((figures) => placeOf(check, figures, notes));
	return [
		line(said.hidden({arm: lesson.id}), 'strong'),
		...oneRoundOnly(places, notes),
		line(practiceWords.arms[lesson.id].lesson),
		...(places.length === 0 ? [line(said.notProbed, 'warn')] : truthTable(places, biasFound(check, issued, notes))),
		...places.map(madeOf),
		...lessonNamed(check, issued, notes),
		...headed(adviceLines(check, notes)),
		line(said.again({arm: lesson.id, extent: extentOf(practice), seed: practice.seed}), 'aside'),
	];
}

/** Advice is headed in its own line, which no page can part from it. */
function headed([first, ...others]: readonly Shown[]): readonly Shown[] {
	if (first?.kind !== 'line' || first.tone === 'good') return first ? [first, ...others] : [];
	return [{...first, text: said.toDoBetter({advice: first.text})}, ...others];
}

/** A ± that says nothing of how well rounds repeat is not to be taken for one that does. */
function oneRoundOnly(places: readonly FoundAndHidden[], notes: readonly ReadingNote[]): readonly Shown[] {
	const once = places.filter(({figures: {place}}) => {
		const at = place === 'other' ? 'extra' : place;
		return new Set(notes.filter(({step}) => placeOfRounds(step) === at).map(({index}) => index)).size === 1;
	});
	return once.length === 0 ? [] : [line(said.oneRound(heldOf(once)), 'warn')];
}

const extentOf = ({isPrepared, roundsEach}: PracticeNotes): PracticeExtent =>
	isPrepared ? (roundsEach === 1 ? 'once' : 'probe') : 'whole';

/** The arm as its deck stood when it was probed at a radius. */
function placeOf({practice}: Check, figures: RadiusFigures, notes: readonly ReadingNote[]): FoundAndHidden[] {
	const place = figures.place === 'other' ? 'extra' : figures.place;
	const note = notes.findLast((one) => placeOfRounds(one.step) === place);
	if (!practice || !note) return [];
	return [{figures, truth: truthOf(specOn(lessonOf(practice), note.deck), figures.radiusMm)}];
}

/** What the bias device was found to do, with the setting that was kept. */
function biasFound({practice}: Check, issued: Issued | null, notes: readonly ReadingNote[]): Compared[] {
	return (issued?.figures.bias?.rows ?? []).flatMap(({radiusMm, biasPct}) => {
		const note = notes.findLast((one) => isOnPlace(placeOfRounds(one.step)) && one.radiusMm === radiusMm);
		if (!practice || !note || biasPct === null) return [];
		return [biasCompared(radiusMm, biasPct, truthOf(specOn(lessonOf(practice), note.deck), radiusMm).biasPct)];
	});
}

/** A device whose fault was cured may still be set too strong or too weak. */
function stillOff({figures: {bias}}: Issued): Shown[] {
	const mostPct = Math.max(0, ...(bias?.rows ?? []).map(({leftoverPct}) => Math.abs(leftoverPct ?? 0)));
	const floorPct = bias?.fit?.frictionFloorPct;
	return floorPct !== undefined && isAbove(mostPct, floorPct) ? [line(said.stillOff({mostPct, floorPct}), 'warn')] : [];
}

/** Whether the findings name the lesson; what was put right before the probe cannot be found in it. */
function lessonNamed({practice}: Check, issued: Issued | null, notes: readonly ReadingNote[]): Shown[] {
	if (!practice || !issued) return [];
	const lesson = lessonOf(practice);
	const finding = issued.findings.find(({code}) => code === lesson.finding);
	if (finding) return [line(said.named(finding), 'good')];
	const {cure} = lesson;
	const probed = notes.filter(({step}) => placeOfRounds(step) !== undefined);
	const isCured = cure !== undefined && probed.some(({deck}) => deck.done.includes(cure));
	if (isCured) return [line(said.cured, 'good'), ...stillOff(issued)];
	return [line(lesson.readsBias ? said.showsWithBias : said.notNamed, 'warn')];
}

/** How the readings came about that still stand in the figures: the rounds of the series that counts. */
export function standingReadings(check: Check): readonly ReadingNote[] {
	const series = seriesThatCounts(check);
	const notes = check.practice?.readings ?? [];
	// With the bias on, the figures are those of the setting that was kept.
	const on = chosenTrial(check, series)?.trial ?? series;
	const probed = allPlaces.flatMap((place) =>
		(isOnPlace(place) ? on[place] : series[place]).flatMap((round, index) =>
			(['innerLimit', 'outerLimit'] as const).map((which) =>
				round[which] && !round.struck
					? notes.findLast(
							(note) =>
								note.step === stepOfRounds(place) &&
								note.index === index &&
								note.which === which &&
								note.at === round[which]?.at,
						)
					: undefined,
			),
		),
	);
	return probed.filter((note) => note !== undefined);
}
