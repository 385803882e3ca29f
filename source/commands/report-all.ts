import path from 'node:path';
import {namesOf} from '../results/years/arms.js';
import {readyFolder} from '../store/folder.js';
import {EXIT} from '../terminal/exit-paths.js';
import {words} from '../words/index.js';
import {armNamed} from './arm-named.js';
import {withPastRows} from './past-rows.js';
import {orRefuse, refuseWith} from './print.js';
import {checkOf, intoFile, type ReportForm, type ReportOptions, reportText} from './report.js';

const say = words.commands.report;

/** What the file on a check is called behind its id. */
const endings: Readonly<Record<ReportForm, string>> = {
	html: '.html',
	markdown: '.md',
	maker: '-maker.html',
	json: '.json',
};

/**
 * `armdrift report --all`: a report of every check, or of every check of an arm, each in a file of its own under the id of
 * the check. One that cannot be written is said, and does not hinder the others.
 * @returns exit status: that of the first one that could not be written, if any
 */
export function runReports({
	id,
	arm,
	as,
	out = '-',
	force = false,
	practice,
	data,
	version,
}: ReportOptions): Promise<number> {
	if (id !== undefined) return Promise.resolve(refuseWith(say.allOrOne));
	if (out === '-') return Promise.resolve(refuseWith(say.folderWanted));
	return withPastRows({data, practice}, async (all, shelf) => {
		const named = arm === undefined ? undefined : armNamed(arm, all, shelf);
		if (named && !named.ok) return named.status;
		const names = named && new Set(namesOf(named.arm, shelf.profiles()));
		const rows = names ? all.filter((one) => names.has(one.arm)) : all;
		if (rows.length === 0) return refuseWith(named ? say.noneOfArm(named) : say.none(shelf));
		const made = await orRefuse(() => {
			readyFolder({id: 'report', values: {}}, out);
			return EXIT.done;
		});
		if (made !== EXIT.done) return made;
		const statuses: number[] = [];
		for (const row of rows) {
			const subject = checkOf(row.id, all, shelf);
			if (subject.of === 'nothing') statuses.push(refuseWith(subject.sentence, subject.status));
			else {
				const text = await reportText(subject, as, {all, shelf, version});
				statuses.push(await intoFile(text, path.join(out, `${row.id}${endings[as]}`), force));
			}
		}
		return statuses.find((status) => status !== EXIT.done) ?? EXIT.done;
	});
}
