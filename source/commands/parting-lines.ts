import {isReadyToPlay, progressOf} from '../check/progress.js';
import {printable} from '../terminal/printable.js';
import {titleOf} from '../words/step-text.js';
import {verdictWord} from '../words/wording.js';
import type {OpenWorkbench} from './open-workbench.js';

/** The last lines on the normal screen: what is saved or filed, and how to go on. */
export function partingLines(workbench: OpenWorkbench, goOn: string): readonly string[] {
	const {openCheck, filed} = workbench;
	if (openCheck) {
		const progress = progressOf(openCheck, workbench.profiles());
		const {current, facts} = progress;
		const deck = isReadyToPlay(progress) ? 'Deck ready to play.' : 'Deck not ready to play.';
		const arm = printable(facts.text('arm-name') ?? 'a new arm', 40);
		const stands = `stands at '${current ? titleOf(current.id) : 'its end'}'.`;
		if (openCheck.practice) return [`PRACTICE saved: ${arm} ${stands}`, `Go on with: ${goOn}`];
		return [`Saved: the check of ${arm} ${stands}`, `${deck} Go on with: ${goOn}`];
	}
	const unfinished = workbench.unfinished();
	if (!filed && unfinished)
		return [`The check of ${printable(unfinished.arm, 40)} still waits at '${unfinished.step}'. Go on with: ${goOn}`];
	if (!filed) return ['Left; no check is open.'];
	const deck =
		filed.outcome === 'interrupted'
			? 'Deck NOT ready to play: see its put-back list under past checks.'
			: 'Deck ready to play; volume down for the first record.';
	return [
		`${filed.check.practice ? 'PRACTICE, filed' : 'Filed'} as ${filed.check.id}: ${filed.issued ? verdictWord[filed.issued.figures.verdict].toLowerCase() : 'no verdict'}.`,
		filed.check.practice
			? `Report on it: ${goOn.replace(/practice$/, `report ${filed.check.id} --practice --as html --out practice.html`)}`
			: deck,
	];
}

/** How this program was started, to be typed again: through npm, and with its data folder. */
export function startedAs(
	variables: Readonly<Record<string, string | undefined>>,
	data: string | undefined,
	command = '',
): string {
	const isNpm = variables.npm_lifecycle_event === 'start';
	const words = `${data === undefined ? '' : ` --data ${printable(data)}`}${command === '' ? '' : ` ${command}`}`;
	if (isNpm) return words === '' ? 'npm start' : `npm start --${words}`;
	return `armdrift${words}`;
}
