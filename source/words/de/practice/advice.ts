import type {ReadingNote} from '../../../check/practice-notes.js';
import type {Place} from '../../../procedure/places.js';
import {percent, withSign} from '../../numbers.js';
import {entries} from '../entries.js';

/** A reading of the gauge by where and when it was taken. */
type Named = Pick<ReadingNote, 'which' | 'index' | 'isTurned'> & {readonly place: Place};

const where: Readonly<Record<Place, string>> = {
	...entries.places,
	inner: 'innerer Radius',
	outer: 'äußerer Radius',
	extra: 'dritter Radius',
};

const limits = {innerLimit: 'innere Grenze', outerLimit: 'äußere Grenze'};

/** 'innerer Radius, äußere Grenze, Runde 2'. */
function readingName({place, which, index, isTurned}: Named): string {
	// There is but one closing round.
	const round = place === 'closing' ? '' : `, Runde ${index + 1}${isTurned ? ' (gedreht)' : ''}`;
	return `${where[place]}, ${limits[which]}${round}`;
}

const mostNamed = 3;

/** The first few by name, the others by number. */
function firstOf<T extends Named>(readings: readonly T[], text: (one: T) => string = readingName): string {
	const more = readings.length - mostNamed;
	return `${readings.slice(0, mostNamed).map(text).join('; ')}${more > 0 ? `; und ${more} weitere` : ''}`;
}

type Readings<More = unknown> = {readonly readings: readonly (Named & More)[]};

/** Who saw to the deck. */
type By = {readonly by: 'you' | 'another'};

/** What was taken without a look: by the hands at the bench, or by others before. */
const unseen = ({by}: By, said: string): string =>
	by === 'another'
		? `Wer dieses Laufwerk vorbereitete, bestätigte ${said}, ohne hinzusehen.`
		: `${said} bestätigt, ohne hinzusehen.`;

/** What to do better. */
export const benchAdvice = {
	noReading: 'Noch kein Messwert genommen.',
	praise: 'Alles gut gemacht: jede Grenze bei ruhigem Arm abgelesen.',
	withoutNudge: ({readings}: Readings) =>
		`Ohne Stups eingetippt: ${firstOf(readings)}. Arm anstupsen, bis er von selbst zurückgeht: Erst das ist eine Grenze.`,
	neverShown: ({readings}: Readings<{readonly readingPct: number}>) =>
		`Eingetippt, aber bei ruhigem Arm nie angezeigt: ${firstOf(readings, (one) => `${withSign(one.readingPct)} (${readingName(one)})`)}. Den letzten Wert eintippen, bei dem der Arm hielt.`,
	shortOfLimit: ({readings}: Readings<{readonly missingPct: number}>) =>
		`Vor der Grenze aufgehört, der Arm hielt noch: ${firstOf(readings, (one) => `${percent(one.missingPct, 1)} (${readingName(one)})`)}. Fein weiterstupsen, bis er von selbst zurückgeht. Dann den letzten Wert eintippen, bei dem der Arm hielt.`,
	unsettled: ({readings, settledMs}: Readings & {readonly settledMs: number}) =>
		`Zu früh abgelesen, keine ${settledMs / 1000} s ruhig: ${firstOf(readings)}. Warten: Nur so zeigt sich, ob ein Arm kriecht.`,
	hurried: ({hurried, nudges}: {readonly hurried: number; readonly nudges: number}) =>
		`Zu schnell gestupst: ${hurried} von ${nudges} Stupsen trafen einen bewegten Arm. Er fliegt dann über seine Grenze. Anstupsen, warten, bis er ruhig ist, ablesen, weiterstupsen.`,
	misread: ({step, typed, shown}: {readonly step: string; readonly typed: string; readonly shown: string}) =>
		`${step}: eingetippt ${typed}, aber das Gerät zeigte ${shown}.`,
	tilted: ({by, tiltPct, isOverridden}: By & {readonly tiltPct: number; readonly isOverridden: boolean}) =>
		`Das Laufwerk war beim Messen geneigt: bis zu ${percent(tiltPct, 1)} vom Zug sind die Neigung.${isOverridden ? ` Die Neigung bestand nicht, ${by === 'another' ? 'und wer dieses Laufwerk vorbereitete, machte trotzdem weiter' : 'und es ging trotzdem weiter'}.` : ''} Bei den Fragen zur Neigung mit ! waagrecht stellen, dann messen.`,
	biased: ({biasPct, ...by}: By & {readonly biasPct: number}) =>
		`Das Antiskating war beim Messen an: Es machte bis zu ${percent(biasPct, 1)} vom Zug. ${unseen(by, '„Antiskating aus“')} Dort mit ! das Gewicht abnehmen, hinsehen, dann bestätigen.`,
	damped: (by: By) =>
		`Die Dämpfung war beim Messen drin. ${unseen(by, '„Dämpfung außer Eingriff“')} Dort mit ! das Paddel heben, hinsehen, dann bestätigen.`,
	unhung:
		'Das Antiskating war beim Ablesen aus. „Antiskating an“ bestätigt, ohne hinzusehen. Dort mit ! das Gewicht einhängen, hinsehen, dann bestätigen.',
};
