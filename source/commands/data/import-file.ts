import {recordLines} from '../../pages/record-lines.js';
import {radiusRecords} from '../../reports/radius-csv.js';
import {type FinishedCheck, summaryOf} from '../../results/record.js';
import {isCheckId} from '../../store/check-id.js';
import type {Codec} from '../../store/context.js';
import type {Span} from '../../store/json-outline.js';
import {LargeDocument} from '../../store/large-document.js';
import {packRow, unpackRow} from '../../store/pack-row.js';
import {faultAt} from '../../store/plain-content.js';
import {StoreError} from '../../store/store-error.js';
import {upgradeContent} from '../../store/upgrades.js';
import {words} from '../../words/index.js';
import {type Remark, storedForms} from '../stored-forms.js';
import {exportKind, exportVersion} from './exports.js';

/** A check of an export, found to be one that this program can keep. */
export type ImportedCheck = {
	readonly id: string;
	readonly record: FinishedCheck;
	/** The record as it stands in the file, in today's stored form. */
	readonly json: unknown;
	readonly remark?: Remark;
};

type Content<F extends keyof typeof storedForms> = (typeof storedForms)[F] extends Codec<infer T> ? T : never;
export type Profiles = Content<'profiles'>;
export type Settings = Content<'settings'>;

const topKeys = ['kind', 'version', 'program', 'exportedAt', 'settings', 'profiles', 'checks'];
const checkKeys = ['id', 'record', 'remark'];

const isGroup = (value: unknown): value is Readonly<Record<string, unknown>> =>
	typeof value === 'object' && value !== null && !Array.isArray(value);

/** An export of this program, opened for reading. Faults are StoreErrors that name the key. */
export class ImportFile {
	readonly program: string;
	readonly exportedAt: string;
	readonly profiles: Profiles | undefined;
	readonly settings: Settings | undefined;
	/** Keys that this program has no place for. */
	readonly unknownKeys: Set<string>;
	/** Stored form of what is in it. */
	readonly #version: number;
	readonly #document: LargeDocument;
	readonly #checks: readonly Span[];
	/** Checks that were looked at in full; the file is the same until {@link assertUnchanged} says otherwise. */
	readonly #shown = new Set<number>();

	/** @throws StoreError 'newer', 'missing', 'damaged', 'blocked', 'unreadable' */
	constructor(file: string) {
		this.#document = new LargeDocument('The export', file);
		try {
			this.#version = this.#oursOf();
			this.program = this.#text('program');
			this.exportedAt = this.#text('exportedAt');
			this.profiles = this.#content('profiles', storedForms.profiles);
			this.settings = this.#content('settings', storedForms.settings);
			this.unknownKeys = new Set(this.#document.keys.filter((key) => !topKeys.includes(key)));
			const checks = this.#document.list('checks');
			if (!checks) throw this.#wanted('checks', 'a list of checks');
			this.#checks = checks;
		} catch (error) {
			this.close();
			throw error;
		}
	}

	get count(): number {
		return this.#checks.length;
	}

	/** @throws StoreError 'damaged' */
	check(index: number): ImportedCheck {
		const where = `checks[${index}]`;
		const span = this.#checks[index];
		const found = span && this.#document.element(span);
		if (!isGroup(found))
			throw this.#document.fault(`${where}: found ${words.documents.shownValue(found)}. Wanted: a check.`);
		for (const key of Object.keys(found)) if (!checkKeys.includes(key)) this.unknownKeys.add(key);
		return this.#guarded(where, () => {
			const {id} = found;
			const json = this.#upgraded('armdrift-check', 'record', found.record);
			const record = this.#parsed(`${where}.record`, json, storedForms.record);
			if (typeof id !== 'string' || !isCheckId(id) || record.check.id !== id)
				throw this.#document.fault(
					`${where}.id: found ${words.documents.shownValue(id)}. Wanted: the id of the check in its record.`,
				);
			if (record.check.practice)
				throw this.#document.fault(
					`${where}: the check ${id} is practice on an invented arm. Take it out of the file.`,
				);
			const {remark} = found;
			const parsed = remark === undefined ? {} : {remark: this.#parsed(`${where}.remark`, remark, storedForms.remark)};
			if (!this.#shown.has(index) && !isShowable(record))
				throw this.#document.fault(`${where}.record.issued is not what is wanted here.`);
			this.#shown.add(index);
			return {id, record, json, ...parsed};
		});
	}

	/** The error for content that is not what it should be: 'checks[3].id: …'. */
	fault(why: string): StoreError {
		return this.#document.fault(why);
	}

	/** @throws StoreError where the file is another one by now */
	assertUnchanged(): void {
		if (!this.#document.isUnchanged()) throw this.fault('it was changed meanwhile. Start the import again.');
	}

	close(): void {
		this.#document.close();
	}

	/** @returns the stored form of an export that is ours and not newer than this program */
	#oursOf(): number {
		const {file} = this.#document;
		if (this.#document.value('kind') !== exportKind)
			throw this.#document.fault(`it is no export of this program (no "kind": "${exportKind}" in it).`);
		const version = this.#document.value('version');
		if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
			throw this.#wanted('version', 'a whole number from 1');
		if (version <= exportVersion) return version;
		const sentence = `The export in "${file}" was written by a newer armdrift: it needs one that reads version ${version} of its files. Nothing was taken from it.`;
		throw new StoreError('newer', file, sentence);
	}

	#text(key: string): string {
		const value = this.#document.value(key);
		if (typeof value === 'string') return value;
		throw this.#wanted(key, 'a text');
	}

	#wanted(key: string, wanted: string): StoreError {
		return this.#document.fault(
			`${key}: found ${words.documents.shownValue(this.#document.value(key))}. Wanted: ${wanted}.`,
		);
	}

	#content<T>(key: string, codec: Codec<T>): T | undefined {
		const value = this.#document.value(key);
		if (value === undefined) return;
		return this.#guarded(key, () => this.#parsed(key, this.#upgraded(`armdrift-${key}`, 'content', value), codec));
	}

	#parsed<T>(where: string, json: unknown, codec: Codec<T>): T {
		const parsed = codec.parse(json);
		if (!parsed.ok) throw this.#document.fault(`${where}.${parsed.sentence}`);
		// A number beyond all numbers is read as Infinity, which no file can hold.
		const fault = faultAt(json, where);
		if (fault !== undefined) throw this.#document.fault(`${fault}.`);
		return parsed.value;
	}

	#upgraded(kind: string, field: string, content: unknown): unknown {
		return upgradeContent(kind, field, content, this.#version);
	}

	#guarded<T>(where: string, work: () => T): T {
		try {
			return work();
		} catch (error) {
			if (error instanceof RangeError) throw this.#document.fault(`${where} is nested too deeply.`);
			throw error;
		}
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
