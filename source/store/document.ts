import {isUtf8} from 'node:buffer';
import {isTooDeep} from './depth.js';
import {forbiddenKeyIn} from './forbidden-key.js';
import {isJson, type Json} from './json.js';
import {lineOfFault} from './json-fault.js';
import type {Damage} from './store-fault.js';
import {upgradeDocument, type Versions} from './upgrades.js';

/** A document ready to be written, and the very text that must then be in the file. */
export type Sealed = {
	readonly document: Record<string, unknown> & {readonly checksum: string};
	readonly text: string;
};

type OpenedDocument =
	| {readonly state: 'sound'; readonly body: Json; readonly checksum: string}
	| {readonly state: 'damaged'; readonly damage: Damage}
	| {readonly state: 'newer'; readonly version: number};

const PREFIX = /^\{"checksum":"([0-9a-f]{8})",$/;
const PREFIX_BYTES = 23;
const BRACE = Buffer.from('{');
export const UTF8_MARK = Buffer.from([0xef, 0xbb, 0xbf]);
export const UTF16_MARKS = [Buffer.from([0xff, 0xfe]), Buffer.from([0xfe, 0xff])];

/**
 * CRC-32 as in ISO/IEC 8802-3 and ITU-T V.42 (reflected polynomial EDB88320): every change of up to 32 neighbouring bits
 * is found. A dozen lines of our own, because loading `node:zlib` for it would delay the first frame.
 */
const TABLE = Uint32Array.from({length: 256}, (_, index) => {
	let value = index;
	for (let bit = 0; bit < 8; bit++) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
	return value;
});

/** From here on loading the system's own routine costs less than going without it. */
const NATIVE_FROM_BYTES = 8192;

/** Checksum of `bytes`, going on from `previous`. */
export const crc32 = (bytes: Uint8Array, previous = 0): number => {
	if (bytes.length >= NATIVE_FROM_BYTES) return process.getBuiltinModule('node:zlib').crc32(bytes, previous);
	let value = ~previous;
	for (const byte of bytes) value = (TABLE[(value ^ byte) & 0xff] ?? 0) ^ (value >>> 8);
	return ~value >>> 0;
};

const hex = (checksum: number): string => checksum.toString(16).padStart(8, '0');

const damaged = (damage: Damage): OpenedDocument => ({state: 'damaged', damage});

/** Puts the checksum before the fields. */
export const sealDocument = (body: Json): Sealed => {
	const text = JSON.stringify(body);
	const checksum = hex(crc32(Buffer.from(text)));
	return {document: {checksum, ...body}, text: `{"checksum":"${checksum}",${text.slice(1)}`};
};

/** The file as written needs no second serialising; one that an editor merely laid out anew still counts as sound. */
const isIntact = (bytes: Buffer, checksum: unknown, body: Json): boolean => {
	if (PREFIX.exec(bytes.toString('latin1', 0, PREFIX_BYTES))?.[1] === checksum) {
		if (hex(crc32(bytes.subarray(PREFIX_BYTES), crc32(BRACE))) === checksum) return true;
	}
	return hex(crc32(Buffer.from(JSON.stringify(body)))) === checksum;
};

const parseText = (bytes: Buffer): {readonly json: unknown} | {readonly damage: Damage} => {
	if (bytes.length === 0) return {damage: {id: 'empty', values: {}}};
	if (UTF16_MARKS.some((mark) => bytes.subarray(0, 2).equals(mark))) return {damage: {id: 'utf-16', values: {}}};
	if (!isUtf8(bytes)) return {damage: {id: 'not-utf-8', values: {}}};
	const text = bytes.toString('utf8');
	try {
		const json: unknown = JSON.parse(text);
		if (isTooDeep(text, json)) return {damage: {id: 'too-deep', values: {}}};
		const at = forbiddenKeyIn(text, json);
		return at === undefined ? {json} : {damage: {id: 'forbidden-key', values: {at}}};
	} catch (error) {
		return {damage: {id: 'not-json', values: {line: lineOfFault(text, error)}}};
	}
};

/**
 * Opens the bytes of a file: decodes, checks kind, version and checksum, and upgrades. A newer version is told from
 * damage before the checksum is looked at, since a newer program may reckon it otherwise.
 */
export const openDocument = (raw: Buffer, kind: string, versions: Versions): OpenedDocument => {
	const bytes = raw.subarray(0, 3).equals(UTF8_MARK) ? raw.subarray(3) : raw;
	const parsed = parseText(bytes);
	if ('damage' in parsed) return damaged(parsed.damage);
	if (!isJson(parsed.json) || parsed.json.kind !== kind) return damaged({id: 'other-kind', values: {}});
	const {checksum, ...body} = parsed.json;
	const {version} = body;
	if (typeof version !== 'number' || !Number.isInteger(version) || version < 0)
		return damaged({id: 'no-version', values: {}});
	if (version > versions.current) return {state: 'newer', version};
	try {
		if (!isIntact(bytes, checksum, body)) return damaged({id: 'checksum', values: {}});
		const upgraded = upgradeDocument(body, version, versions);
		return upgraded === undefined
			? damaged({id: 'unknown-version', values: {version}})
			: {state: 'sound', body: upgraded, checksum: String(checksum)};
	} catch {
		return damaged({id: 'not-upgraded', values: {}});
	}
};
