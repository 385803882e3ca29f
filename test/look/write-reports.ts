import {spawnSync} from 'node:child_process';
import {mkdirSync} from 'node:fs';
import path from 'node:path';
import {folderWith} from '../helpers/filed-checks.js';
import {driftingArm, fullStory, idFor, type Played, playedInTurn} from '../helpers/invented-checks.js';
import {northDeckWith} from '../helpers/sample-check.js';

/**
 * Plays invented checks, files them in a folder, and lets the built program report on them: what a person gets to see.
 * Called with the program, the folder for the reports, and their language.
 */
const [program = '', folder = '', language = 'en'] = process.argv.slice(2);

/** An arm with a long name in another script, left with its deck in pieces. */
const foreign: Played = {
	at: '2026-10-03T18:20:00+02:00',
	script: northDeckWith({
		'arm-name': 'ذراع المنصة الشمالية 👩🏽‍🔧 Langspielplattentonarmversuch <b>fett</b> & "neu"',
		'room-note': 'fan off; the left foot stands on paper | 2 mm',
	}),
	leftAt: 'back-lock',
};

/** A sound arm, checked once. */
const sound: Played = {
	at: '2026-09-05T10:00:00+02:00',
	script: northDeckWith(
		{
			'arm-name': 'quiet deck',
			'gauge-turns': 'no',
			'zero-free-before': '-',
			'zero-free-after': '-',
			'gauge-step': '0.1',
			'gauge-nudge': '0.1',
		},
		{inner: [['0.9 in', '1 out']], outer: [['0.8 in', '1.1 out']], closing: [['0.9 in', '1 out']]},
	),
};

const records = [
	...playedInTurn([...driftingArm, fullStory]),
	...playedInTurn([foreign]),
	...playedInTurn([sound]),
].map(({record}) => record);
const data = await folderWith(records, {voids: {[idFor(driftingArm[1]?.at ?? '')]: 'the deck was disturbed'}});

mkdirSync(folder, {recursive: true});
const wanted = {
	'check.html': [idFor(fullStory.at), '--as', 'html'],
	'arm.html': ['--arm', 'north deck', '--as', 'html'],
	'maker.html': ['--arm', 'north deck', '--as', 'maker'],
	'foreign.html': [idFor(foreign.at), '--as', 'html'],
	'sound.html': ['--arm', 'quiet deck', '--as', 'html'],
	'check.md': [idFor(fullStory.at), '--as', 'markdown'],
} as const;
for (const [name, args] of Object.entries(wanted)) {
	const where = ['--data', data, '--language', language];
	const all = [program, ...where, 'report', ...args, '--out', path.join(folder, name), '--force'];
	const {status} = spawnSync(process.execPath, all, {stdio: 'inherit'});
	if (status !== 0) process.exitCode = 1;
}
