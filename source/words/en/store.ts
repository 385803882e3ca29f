import type {Sentences} from '../../said.js';
import type {Damage, DamageValues, StoreFaultValues, Thing, ThingValues} from '../../store/store-fault.js';
import {saidBack} from '../../visible-text.js';
import {speaker} from '../speaker.js';
import {misfitText, valueText} from './misfits.js';
import {meaningOf} from './system.js';

/** What a fault is about; each begins a sentence. */
const things: Sentences<ThingValues> = {
	'back-up': () => 'The back-up',
	calendar: () => 'The calendar',
	check: ({id}) => `The finished check ${id}`,
	checks: () => 'The list of finished checks',
	data: () => 'The data',
	draft: () => 'The open check',
	export: () => 'The export',
	going: () => 'The rest of the deleted arm',
	'last-number': () => 'The number of the last save',
	lock: () => 'The lock against a second copy',
	month: ({month}) => `The list of the checks of ${month}`,
	practice: () => 'The practice data',
	profiles: () => 'The list of profiles',
	remark: ({id}) => `The remark on the check ${id}`,
	remarks: () => 'The folder of remarks on checks',
	report: () => 'The report',
	settings: () => 'The file of settings',
};
const the: (thing: Thing) => string = speaker(things);

const damages: Sentences<DamageValues> = {
	checksum: () => 'something else than armdrift changed it (its checksum does not fit)',
	content: (misfit) => misfitText(misfit),
	empty: () => 'it is empty',
	'no-number': () => 'it lacks the number of its save',
	'no-time': () => 'it does not say when it was saved',
	'no-version': () => 'it names no version',
	'not-json': ({line}) => `it is not whole JSON (line ${line})`,
	'not-upgraded': () => 'it could not be brought up to date',
	'not-utf-8': ({line}) => `it holds bytes that are not UTF-8${line === undefined ? '' : ` (line ${line})`}`,
	'not-object': ({line}) => `it is not a whole JSON object (line ${line})`,
	'other-check': () => 'it holds another check than its name says',
	'other-hand': () => 'something else changed it while armdrift was running; armdrift goes on with its own',
	'other-kind': () => 'it is not a file of this kind',
	'other-remark': () => 'it belongs to another check',
	'part-too-large': () => 'a part of it is far larger than any file of this program',
	'twofold-key': ({key}) => `the key "${key}" stands twice in one object`,
	'too-deep': ({line}) => `it is nested too deeply${line === undefined ? '' : ` (line ${line})`}`,
	'too-large': () => 'it is far larger than any file of this program',
	'unknown-version': ({version}) => `it is of version ${version}, which this program does not know`,
	unreadable: () => 'it could not be read',
	'whole-too-large': ({mostMb}) =>
		`it is one JSON document of more than ${mostMb} MB. Export it again with a newer armdrift`,
	'utf-16': () => 'it is in UTF-16, not in UTF-8',
	'forbidden-key': ({at}) => `it has a key "${at}", which no file of this program has`,
};
const damageOf: (damage: Damage) => string = speaker(damages);

const standing = {
	folder: 'a folder',
	link: 'a link',
	device: 'a pipe or a device',
	other: 'something else',
};

/** What a person reads of each trouble of the store. Names and paths in it are as they came: whoever prints it makes it safe. */
export const store: Sentences<StoreFaultValues> = {
	'not-plain': ({thing, file, found}) =>
		`${the(thing)} needs "${file}", but ${standing[found]} stands there. Move it away, then try again.`,
	unusable: ({file, damage}) => `The export in "${file}" cannot be used: ${damageOf(damage)}.`,
	'set-aside': ({thing, file, damage, aside}) =>
		`${the(thing)} in "${file}" cannot be used: ${damageOf(damage)}. That file is kept beside it as "${aside}".`,
	'left-there': ({thing, file, damage}) =>
		`${the(thing)} in "${file}" cannot be used: ${damageOf(damage)}. It stays there, because nothing can be written now.`,
	'remark-damaged': ({thing, file, damage}) =>
		`${the(thing)} in "${file}" cannot be used: ${damageOf(damage)}. Open that check under past checks, and say whether it counts.`,
	'not-removable': ({thing, file, damage}) =>
		`${the(thing)} was not removed from "${file}": ${damageOf(damage)}. Move that file away, then try again.`,
	'not-set-aside': ({thing, file, damage, system}) =>
		`${the(thing)} is damaged (${damageOf(damage)}) and was not saved in "${file}": ${meaningOf(system)}`,
	locked: ({file, dataDir, pid, since, host, isSure = true}) =>
		host === undefined
			? `Another copy (process ${pid}, since ${since}) is writing to "${dataDir}". Leave that copy first. ${isSure ? 'You can read past checks all the same.' : `If none is running, remove the file "${file}".`}`
			: `Another copy (process ${pid} on the computer ${host}, since ${since}) is writing to "${dataDir}". Leave that copy first. If it no longer runs, remove the file "${file}".`,
	'no-check': ({dataDir, id}) =>
		`The finished check ${id} is not in "${dataDir}". Look for its id in the list of past checks.`,
	'no-id': ({file, id}) =>
		`"${saidBack(id)}" is no id of a check in "${file}". Look for its id in the list of past checks.`,
	'no-file': ({file}) => `There is no file "${file}".`,
	newer: ({thing, file, version}) =>
		thing.id === 'export'
			? `The export in "${file}" comes from a newer armdrift (version ${version} of its files). Nothing was taken from it. Use that newer armdrift.`
			: `${the(thing)} in "${file}" comes from a newer armdrift (version ${version} of its files). It was left as it is. Use that newer armdrift.`,
	'folder-unnamed': () =>
		'The folder given for the data has no usable name. Name a folder for the data with --data or ARMDRIFT_DATA.',
	'home-unknown': () =>
		'No home folder is known (HOME is not a full path). Name a folder for the data with --data or ARMDRIFT_DATA.',
	'older-copy': ({thing, file, savedAt, newest}) => {
		const used = `${the(thing)} is used as it was saved ${savedAt}. Look whether the last answer is in it.`;
		const became = {
			damaged: used,
			lost: `The last save is no longer on the disk, as after a power cut. ${used}`,
			missing: `The second file beside "${file}" is missing. ${used}`,
		};
		return became[newest];
	},
	'practice-blocked': ({file}) =>
		`Practice data go into "${file}", but something else is kept there. Rename that folder, then try again.`,
	'practice-only': ({file}) =>
		`"${file}" holds only practice checks of invented arms. Name another folder with --data.`,
	'refused-value': ({thing, file, ...value}) =>
		`${the(thing)} was not saved in "${file}": ${valueText(value)}. Correct that entry, then try again.`,
	'refused-content': ({thing, file, ...misfit}) =>
		`${the(thing)} was not saved in "${file}": ${misfitText(misfit)}. Correct that, then try again.`,
	'cut-short': ({thing, file}) =>
		`${the(thing)} was not saved: the disk took only a part of "${file}". Free some space on it, then try again.`,
	'not-saved': ({thing, file, system, option, left}) =>
		`${the(thing)} was not saved in "${file}": ${meaningOf(system, option)}${left === undefined ? '' : ` Remove the unfinished file "${left}".`}`,
	'part-left': ({thing, file, left}) =>
		`${the(thing)} is whole in "${file}". Remove "${left}" by hand: armdrift could not.`,
	'not-cleared': ({file, id, system}) =>
		`The check ${id} IS FILED. Only its open copy is still in "${file}"${system === undefined ? '.' : `: ${meaningOf(system)}`} A later start removes it.`,
	'not-read': ({thing, file, system}) => `${the(thing)} could not be read from "${file}": ${meaningOf(system)}`,
	'not-removed': ({thing, file, system}) => `${the(thing)} was not removed from "${file}": ${meaningOf(system)}`,
	'target-there': ({file, option, mayForce}) =>
		mayForce
			? `"${file}" is there already. Add --force to overwrite it. Or name another file with ${option}.`
			: `"${file}" is there already. Name another file with ${option}.`,
	'target-not-plain': ({thing, file, option}) =>
		`${the(thing)} was not saved: "${file}" is no plain file. Name another file with ${option}.`,
	'source-not-plain': ({file}) => `The export must be a plain file, but "${file}" is none.`,
	'practice-among-real': ({thing, file}) =>
		`${the(thing)} in "${file}" is practice on an invented arm, and does not count. Move that file away.`,
};
