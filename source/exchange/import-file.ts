import type {Hindrance} from '../desk/hindrance.js';
import {type Remark, type StoredProfiles, type StoredSettings, storedForms} from '../desk/stored-forms.js';
import {recordLines} from '../pages/record-lines.js';
import {radiusRecords} from '../reports/radius-csv.js';
import {type FinishedCheck, summaryOf} from '../results/record.js';
import {isCheckId} from '../store/check-id.js';
import type {Codec} from '../store/context.js';
import {isJson} from '../store/json.js';
import {packRow, unpackRow} from '../store/pack-row.js';
import {faultAt} from '../store/plain-content.js';
import {upgradeContent} from '../store/upgrades.js';
import {documentWords} from '../words/documents.js';
import {words} from '../words/index.js';
import {ExportFile} from './export-file.js';

/** A check of an export, found to be one that this program can keep. */
export type ImportedCheck = {
	readonly id: string;
	readonly record: FinishedCheck;
	/** The record as it stands in the file, in today's stored form. */
	readonly json: unknown;
	readonly remark?: Remark;
};

const say = words.commands.exchange;

const checkKeys = ['id', 'record', 'remark'];

/** An export of this program, opened for an import: what is in it is looked at, and brought to today's stored form. */
export class ImportFile {
	readonly program: string;
	readonly exportedAt: string;
	readonly profiles: StoredProfiles | undefined;
	readonly settings: StoredSettings | undefined;
	/** Keys that this program has no place for. */
	readonly unknownKeys: Set<string>;
	readonly #export: ExportFile;
	/** Checks that were looked at in full; the file is the same until {@link assertUnchanged} says otherwise. */
	readonly #shown = new Set<number>();

	/** @throws StoreError, Hindrance 'newer', 'missing', 'damaged', 'blocked', 'unreadable' */
	constructor(file: string) {
		this.#export = new ExportFile(file);
		try {
			this.program = this.#text('program');
			this.exportedAt = this.#text('exportedAt');
			this.#export.readParts();
			this.profiles = this.#content('profiles', storedForms.profiles);
			this.settings = this.#content('settings', storedForms.settings);
			this.unknownKeys = new Set(this.#export.unknownKeys);
		} catch (error) {
			this.close();
			throw error;
		}
	}

	get count(): number {
		return this.#export.checks.length;
	}

	/** @throws StoreError, Hindrance 'damaged' */
	check(index: number): ImportedCheck {
		const {where, read} = this.#checkAt(index);
		const found = read();
		if (!isJson(found))
			throw this.#export.fault(say.wanted({where, found: documentWords.shownValue(found), wanted: 'check'}));
		for (const key of Object.keys(found)) if (!checkKeys.includes(key)) this.unknownKeys.add(key);
		const {id, remark} = found;
		const json = this.#upgraded('armdrift-check', 'record', found.record);
		const record = this.#parsed(`${where}.record`, json, storedForms.record);
		if (typeof id !== 'string' || !isCheckId(id) || record.check.id !== id)
			throw this.#export.fault(say.wanted({where: `${where}.id`, found: documentWords.shownValue(id), wanted: 'id'}));
		if (record.check.practice) throw this.#export.fault(say.practice({where, id}));
		const noted = remark === undefined ? undefined : this.#upgraded('armdrift-remark', 'remark', remark);
		const parsed = noted === undefined ? {} : {remark: this.#parsed(`${where}.remark`, noted, storedForms.remark)};
		if (!this.#shown.has(index) && !isShowable(record)) throw this.#export.fault(say.notIssued({where}));
		this.#shown.add(index);
		return {id, record, json, ...parsed};
	}

	/** The error for a check that stands in it twice. */
	twofold(index: number, id: string): Hindrance {
		return this.#export.fault(say.checkTwice({where: this.#checkAt(index).where, id}));
	}

	/** @throws Hindrance where the file is another one by now */
	assertUnchanged(): void {
		if (!this.#export.isUnchanged()) throw this.#export.fault(say.changedMeanwhile);
	}

	close(): void {
		this.#export.close();
	}

	#checkAt(index: number): ExportFile['checks'][number] {
		const check = this.#export.checks[index];
		if (!check) throw new Error(`there is no check ${index}`);
		return check;
	}

	#text(key: string): string {
		const value = this.#export.head[key];
		if (typeof value === 'string') return value;
		throw this.#export.fault(say.wanted({where: key, found: documentWords.shownValue(value), wanted: 'text'}));
	}

	#content<T>(key: 'profiles' | 'settings', codec: Codec<T>): T | undefined {
		const value = this.#export[key];
		if (value === undefined) return;
		return this.#parsed(key, this.#upgraded(`armdrift-${key}`, 'content', value), codec);
	}

	#parsed<T>(where: string, json: unknown, codec: Codec<T>): T {
		const parsed = codec.parse(json);
		if (!parsed.ok) throw this.#export.fault(say.misfit({where, ...parsed.misfit}));
		// A number beyond all numbers is read as Infinity, which no file can hold.
		const fault = faultAt(json, where);
		if (fault !== undefined) throw this.#export.fault(say.value(fault));
		return parsed.value;
	}

	#upgraded(kind: string, field: string, content: unknown): unknown {
		return upgradeContent(kind, field, content, this.#export.version);
	}
}

/** What was issued is kept as it is and has no schema of its own: it must do for everything that will be made of it. */
function isShowable(record: FinishedCheck): boolean {
	try {
		recordLines(record);
		radiusRecords({record});
		return unpackRow(packRow({sizeBytes: 0, changedMs: 0, summary: summaryOf(record)})) !== undefined;
	} catch {
		return false;
	}
}
