import {mkdirSync, rmSync, writeFileSync} from 'node:fs';
import path from 'node:path';
import {stripVTControlCharacters} from 'node:util';
import stringWidth from 'string-width';
import {procedure} from '../../../source/procedure/index.js';
import type {Look} from '../../../source/screens/look.js';
import {besideScenes} from './beside-scenes.js';
import {detourScenes, walkScenes} from './check-scenes.js';
import {practiceScenes} from './practice-scenes.js';
import {type Drawn, pageOf} from './sheets.js';
import {framesOf, type Scene, type Size} from './terminal.js';

/**
 * Draws the screens of invented checks as text, as text with its escape sequences, and as pages, in each size.
 * Called with the folder for them and, where not all are wanted, a part of the names. Ends with a fault where a frame
 * does not fit its terminal.
 */
const [folder = '', only = ''] = process.argv.slice(2);

const sizes: readonly Size[] = [
	{columns: 80, rows: 24},
	{columns: 40, rows: 20},
	{columns: 120, rows: 40},
];
const usual: Look = {color: true, unicode: true, screenReader: false};
const otherLooks = {
	ascii: {color: false, unicode: false, screenReader: false},
	spoken: {color: false, unicode: true, screenReader: true},
} as const satisfies Readonly<Record<string, Look>>;

/** The screens that tell most, each by how its name begins: pictures of their own, and the other looks. */
const chosen = [
	'safe',
	'guard-on',
	'level-lr-1',
	'force-reading',
	'guard-gap',
	'probe-inner',
	'probe-half-round',
	'verdict-beyond',
	'verdict-sound',
	'bias-set',
	'bias-result',
	'back-force',
	'resume-after-an-hour',
];

const faults: string[] = [];

/** What of a frame does not fit: as tall as the terminal Ink would clear everything at each key. */
function checkFit(title: string, frame: string, {columns, rows}: Size): void {
	const lines = stripVTControlCharacters(frame).split('\n');
	if (lines.length > rows - 1) faults.push(`${title}: ${lines.length} rows of ${rows - 1}`);
	const widest = Math.max(...lines.map((line) => stringWidth(line)));
	if (widest > columns) faults.push(`${title}: ${widest} columns of ${columns}`);
}

async function draw(scene: Scene, nth: number, size: Size, look: Look, into: string): Promise<readonly Drawn[]> {
	const frames = await framesOf(scene, size, look);
	return frames.map((ansi, page) => {
		const title = `${String(nth).padStart(3, '0')}-${scene.name}${page === 0 ? '' : `.${page + 1}`}`;
		const drawn = {title, ansi, size: scene.size ?? size};
		// What is read aloud goes by on the normal screen, so it may be of any length.
		if (!look.screenReader) checkFit(`${path.relative(folder, into)}/${title}`, ansi, drawn.size);
		writeFileSync(path.join(into, `${title}.txt`), `${stripVTControlCharacters(ansi)}\n`);
		writeFileSync(path.join(into, `${title}.ansi`), `${ansi}\n`);
		writeFileSync(path.join(into, `${title}.html`), pageOf(title, [drawn]));
		return drawn;
	});
}

const all = [...besideScenes(), ...(await walkScenes()), ...detourScenes(), ...practiceScenes()];
const scenes = all.map((scene, index) => ({scene, nth: index + 1}));
const wanted = scenes.filter(({scene}) => scene.name.includes(only));
const chosenNames = new Set(
	chosen.map((beginning) => {
		const found = all.find(({name}) => name === beginning) ?? all.find(({name}) => name.startsWith(beginning));
		if (!found) console.log(`No screen is called ${beginning} any more.`);
		return found?.name;
	}),
);
// Whoever asks for some wants them close by.
const isChosen = ({scene}: {readonly scene: Scene}): boolean => only !== '' || chosenNames.has(scene.name);
const met = new Set(all.map(({step}) => step));
const unmet = procedure.filter(({id, usual}) => !usual && !met.has(id)).map(({id}) => id);
if (unmet.length > 0) console.log(`No screen shows these steps: ${unmet.join(', ')}.`);

let count = 0;
for (const size of sizes) {
	const name = `${size.columns}x${size.rows}`;
	const into = path.join(folder, name);
	// Numbers of another time would mislead.
	rmSync(into, {recursive: true, force: true});
	mkdirSync(into, {recursive: true});
	const usualFrames: Drawn[] = [];
	const chosenFrames: Drawn[] = [];
	for (const one of wanted) {
		const drawn = await draw(one.scene, one.nth, size, usual, into);
		usualFrames.push(...drawn);
		if (isChosen(one)) chosenFrames.push(...(only === '' ? drawn.slice(0, 2) : drawn));
	}
	writeFileSync(path.join(into, 'all.html'), pageOf(`All screens, ${name}`, usualFrames));
	writeFileSync(path.join(into, 'chosen.html'), pageOf(`Chosen screens, ${name}`, chosenFrames));
	writeFileSync(path.join(into, 'light.html'), pageOf(`On light ground, ${name}`, chosenFrames, 'light'));
	for (const [look, asked] of Object.entries(otherLooks)) {
		const beside = path.join(into, look);
		mkdirSync(beside, {recursive: true});
		const drawn: Drawn[] = [];
		for (const {scene, nth} of wanted.filter(isChosen)) drawn.push(...(await draw(scene, nth, size, asked, beside)));
		writeFileSync(path.join(into, `${look}.html`), pageOf(`${look}, ${name}`, drawn));
		count += drawn.length;
	}
	count += usualFrames.length;
}
console.log(`${count} frames of ${wanted.length} screens.`);
if (faults.length > 0) {
	console.log(`These do not fit their terminal:\n${faults.join('\n')}`);
	process.exitCode = 1;
}
