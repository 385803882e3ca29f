import {Hindrance} from '../desk/hindrance.js';
import type {Json} from '../store/json.js';
import {LineFile} from '../store/line-file.js';
import {StoreError} from '../store/store-error.js';
import {documentWords} from '../words/documents.js';
import {words} from '../words/index.js';
import {exportKind, exportVersion} from './write-export.js';

const say = words.commands.exchange;

const headKeys = ['kind', 'version', 'program', 'exportedAt'];

/** A check that is in an export: the key under which it stands there, and how to get at it. */
type CheckPlace = {readonly where: string; readonly read: () => unknown};

/**
 * An export as it lies in its file: one check a line, or, as earlier programs wrote it, a single JSON document. Of the
 * lines no more than one is in memory at a time; a single document is read whole.
 */
export class ExportFile {
	/** What says that it is an export, of which version, by which program and when. */
	readonly head: Json;
	/** Stored form of what is in it. */
	readonly version: number;
	readonly checks: CheckPlace[] = [];
	readonly unknownKeys: string[] = [];
	profiles: unknown;
	settings: unknown;
	readonly #file: LineFile;
	readonly #hasLines: boolean;

	/** @throws StoreError, Hindrance where it is none, or of a newer version */
	constructor(file: string) {
		this.#file = new LineFile(file);
		try {
			const first = this.#firstObject();
			this.#hasLines = first?.kind === exportKind && !('checks' in first);
			this.head = first && this.#hasLines ? first : this.#file.whole();
			this.version = this.#versionOf(this.head);
		} catch (error) {
			this.close();
			throw error;
		}
	}

	/** Finds everything that is in it. @throws StoreError, Hindrance 'damaged' */
	readParts(): void {
		if (this.#hasLines) this.#readLines();
		else this.#readDocument();
	}

	/** The error for content that is not what it should be. */
	fault(because: string): Hindrance {
		const {file} = this.#file;
		return new Hindrance('damaged', file, say.notUsed({file, because}));
	}

	/** Whether it is still the file that was opened. */
	isUnchanged(): boolean {
		return this.#file.isUnchanged();
	}

	close(): void {
		this.#file.close();
	}

	/** The object in the first line; undefined where there is none, as in a document that takes several lines. */
	#firstObject(): Json | undefined {
		const {value: first} = this.#file.lines().next();
		try {
			return first && this.#file.object(first);
		} catch (error) {
			if (error instanceof StoreError && error.code === 'damaged') return;
			throw error;
		}
	}

	#versionOf({kind, version}: Json): number {
		const {file} = this.#file;
		if (kind !== exportKind) throw this.fault(say.notOurs({kind: exportKind}));
		if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
			throw this.fault(say.wanted({where: 'version', found: documentWords.shownValue(version), wanted: 'version'}));
		if (version <= exportVersion) return version;
		throw new StoreError('newer', {id: 'newer', values: {thing: {id: 'export', values: {}}, file, version}});
	}

	#readLines(): void {
		let [isHead, isWhole] = [true, false];
		for (const span of this.#file.lines()) {
			const keys = Object.entries(this.#file.object(span) ?? {});
			for (const [key, value] of keys) {
				if (key === 'check') {
					const where = say.checkInLine(span);
					this.checks.push({where, read: () => this.#file.object(span)?.check});
				} else if (key === 'end') isWhole = true;
				else if (!isHead || !headKeys.includes(key)) this.#part(key, value);
			}
			isHead = false;
		}
		if (!isWhole) throw this.fault(say.cutShort);
	}

	#readDocument(): void {
		const {checks, ...others} = this.head;
		for (const [key, value] of Object.entries(others)) if (!headKeys.includes(key)) this.#part(key, value);
		if (!Array.isArray(checks))
			throw this.fault(say.wanted({where: 'checks', found: documentWords.shownValue(checks), wanted: 'checks'}));
		this.checks.push(...checks.map((check, index) => ({where: `checks[${index}]`, read: () => check})));
	}

	#part(key: string, value: unknown): void {
		if (key !== 'profiles' && key !== 'settings') {
			this.unknownKeys.push(key);
			return;
		}
		if (this[key] !== undefined) throw this.fault(say.twice({key}));
		this[key] = value;
	}
}
