import type {ProbingWay} from '../../../practice/proof.js';
import type {ShortfallValues} from '../../../practice/shortfalls.js';
import type {Sentences} from '../../../said.js';
import {percent, plainNumber, rounded} from '../../numbers.js';

const way = ({rounds, stepPct, scatterPct, setAnew}: ProbingWay): string =>
	`${rounds} Runden, Schritt ${plainNumber(stepPct)} %, Streuung ${plainNumber(scatterPct)} %, ${setAnew ? 'neu aufgestellt' : 'nicht neu aufgestellt'}`;

const ofFigure = {pull: 'des Zugs', band: 'der Reibung'};

/** Where a proof falls short of what it must reach, without the full stop. */
const shortfalls: Sentences<ShortfallValues> = {
	'interval-too-narrow': (values) =>
		`${way(values.way)}: das Intervall ${ofFigure[values.figure]} trifft in ${percent(100 * values.holding, 1)}`,
	'called-good': (values) => `${way(values.way)}: ${percent(100 * values.share, 1)} der Arme mit zu viel heißen gut`,
	'lesson-not-named': ({arm, finding, named, of}) => `${arm}: ${finding} ist in ${named} von ${of} genannt`,
};

type Head = {
	readonly arms: number;
	readonly seed: number;
	readonly tookMs: number;
	readonly radiiMm: {readonly inner: number; readonly outer: number};
};

/** What the proof prints beside its figures, in lines of eighty columns at most. */
export const proof = {
	countWanted: ({mostArms}: {readonly mostArms: number}) =>
		`Verlangt: --prove mit einer ganzen Zahl von 1 bis ${mostArms}.`,
	head: ({arms, seed, tookMs, radiiMm}: Head) =>
		`${arms} erfundene Arme, seed ${seed}, ${rounded(tookMs / 1000, 0)} s. Eine programmierte Hand misst sie
bei ${radiiMm.inner} und ${radiiMm.outer} mm, jeden Arm auf jede dritte Weise.
`,
	holding: ({holding, settingUpPct}: {readonly holding: number; readonly settingUpPct: number}) =>
		`Wie oft das genannte 95-%-Intervall die verborgene Wahrheit trifft, mit dem
99-%-Intervall, das der Zufall für diesen Anteil lässt (zu wenig, wo sein oberes
Ende unter ${percent(100 * holding, 0)} liegt), dazu mittleres ± und mittlerer Fehler der Zahl, in
Prozent der Auflagekraft. „Streuung“ ist die Standardabweichung einer Grenze;
das Aufstellen verschiebt den Zug um ${plainNumber(settingUpPct)} %, bei „neu“ je Runde, sonst je Radius:
`,
	oneRound: `Eine Runde je Radius: Wie gut sich Runden wiederholen, ist dann angenommen; die
Zahlen sagen „angenommen“ und versprechen nichts (kein Mindestmaß):
`,
	restless: ({restlessPct}: {readonly restlessPct: number}) =>
		`Dieselben Arme im Luftzug, wo die Kraft ständig um ${plainNumber(restlessPct)} % wandert (kein
Mindestmaß): Das nimmt von der Reibung, und kein Teil des ± enthält das:
`,
	calledGood: ({wronglyGood}: {readonly wronglyGood: number}) =>
		`Wie oft ein Arm gut heißt, der es nicht ist (verlangt: weniger als ${percent(100 * wronglyGood, 0)} derer
mit zu viel):
`,
	lessons: 'Wie oft die Lektion jedes Übungsarms genannt wird:\n',
	setting: {anew: 'neu', once: 'einmal'},
	holdingHead: [
		...['gestellt', 'Runden', 'Schritt', 'Streuung', 'n'],
		...['Zug', 'Zufall', '±', 'Fehler'],
		...['Reibung', 'Zufall', '±', 'Fehler'],
	],
	goodHead: ['Messungen', 'nicht gut', 'heißt gut', 'zu viel', 'heißt gut', 'Skalenende'],
	lessonHead: ['Arm', 'Befund', 'genannt'],
	lessonNamed: ({named, of}: {readonly named: number; readonly of: number}) => `${named} von ${of}`,
	shortfalls,
	holds: 'Der Nachweis hält.\n',
	/** `enough`: how many arms leave little to chance, where there were fewer. */
	fallsShort: ({
		shortfalls: sentences,
		enough,
	}: {
		readonly shortfalls: readonly string[];
		readonly enough: number | null;
	}) =>
		`Der Nachweis reicht nicht:
${sentences.join('\n')}${enough === null ? '' : `\nBei weniger als ${enough} Armen kann das Zufall sein.`}
`,
};
