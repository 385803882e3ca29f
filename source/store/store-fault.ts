import type {Nothing, Said} from '../said.js';

/** What is kept in a file, or is being done with one. */
export type ThingValues = {
	'back-up': Nothing;
	calendar: Nothing;
	check: {readonly id: string};
	/** The folder of the finished checks. */
	checks: Nothing;
	data: Nothing;
	draft: Nothing;
	export: Nothing;
	/** Some files of one folder that are to be removed. */
	going: Nothing;
	'last-number': Nothing;
	lock: Nothing;
	/** The index of the checks of a month, `2026-11`. */
	month: {readonly month: string};
	practice: Nothing;
	profiles: Nothing;
	remark: {readonly id: string};
	/** The folder of all of them. */
	remarks: Nothing;
	report: Nothing;
	settings: Nothing;
};
export type Thing = Said<ThingValues>;

/** Content that is not of its form: at which key (none: all of it), and the id of what was wanted there, if it has one. */
export type Misfit = {readonly at: string; readonly why: string};

/** What is wrong with the content of a file. Lines are counted from 1. */
export type DamageValues = {
	checksum: Nothing;
	content: Misfit;
	empty: Nothing;
	/** A key that would make another object of the one in which it stands: where it stands, `record.check.__proto__`. */
	'forbidden-key': {readonly at: string};
	'no-number': Nothing;
	'no-time': Nothing;
	'no-version': Nothing;
	'not-json': {readonly line: number};
	'not-object': {readonly line: number};
	'not-upgraded': Nothing;
	'not-utf-8': {readonly line?: number};
	'other-check': Nothing;
	/** It is whole, and neither written nor read by this copy, which is at work on another content. */
	'other-hand': Nothing;
	'other-kind': Nothing;
	'other-remark': Nothing;
	'part-too-large': Nothing;
	/** A key that stands twice in one object, so that nobody knows which is meant. */
	'twofold-key': {readonly key: string};
	'too-deep': {readonly line?: number};
	'too-large': Nothing;
	'unknown-version': {readonly version: number};
	unreadable: Nothing;
	'utf-16': Nothing;
	/** A document that must be read in one piece, and is larger than that can be. */
	'whole-too-large': {readonly mostMb: number};
};
export type Damage = Said<DamageValues>;

type OnFile = {readonly thing: Thing; readonly file: string};

/** What the system says: the short name of its error (`ENOSPC`), or else its message. */
type OfSystem = OnFile & {readonly system: string};

/** An option of the command line that names a place. */
export type PlaceOption = '--data' | '--out' | '--calendar' | '--backup';

/** All trouble that the store tells of, by id. `file` is the full path of the file or folder that it is about. */
export type StoreFaultValues = {
	/** Something that is no plain file stands there. */
	'not-plain': OnFile & {readonly found: 'folder' | 'link' | 'device' | 'other'};
	/** An export of which nothing could be used. */
	unusable: {readonly file: string; readonly damage: Damage};
	/** It could not be used, and was moved aside under another name beside it. */
	'set-aside': OnFile & {readonly damage: Damage; readonly aside: string};
	/** It could not be used, and cannot be moved aside now. */
	'left-there': OnFile & {readonly damage: Damage};
	'remark-damaged': OnFile & {readonly damage: Damage};
	'not-removable': OnFile & {readonly damage: Damage};
	'not-set-aside': OfSystem & {readonly damage: Damage};
	/** Another copy is writing: since when, by the clock on the wall; `host` where that is another computer. */
	locked: {
		readonly file: string;
		readonly dataDir: string;
		readonly pid: number;
		readonly since: string;
		readonly host?: string;
		/** No other process can be meant; the number may else have gone to another one since. */
		readonly isSure?: boolean;
	};
	/** A check that is not on file, though its id is one. */
	'no-check': {readonly file: string; readonly dataDir: string; readonly id: string};
	'no-id': {readonly file: string; readonly id: string};
	'no-file': {readonly file: string};
	newer: OnFile & {readonly version: number};
	'folder-unnamed': {readonly file: string};
	'home-unknown': {readonly file: string};
	/** An older copy is used: saved when, by the clock on the wall, and what became of the newest one. */
	'older-copy': OnFile & {readonly savedAt: string; readonly newest: 'damaged' | 'lost' | 'missing'};
	'practice-blocked': {readonly file: string};
	'practice-only': {readonly file: string};
	/** A check of an invented arm lies among real ones. */
	'practice-among-real': OnFile;
	/** A value that JSON would turn into something else, at a key of the content. */
	'refused-value': OnFile & FoundValue;
	'refused-content': OnFile & Misfit;
	/** The disk took only a part. */
	'cut-short': OnFile;
	/** `left`: the name of an unfinished file that could not be removed. */
	'not-saved': OfSystem & {readonly option: PlaceOption; readonly left?: string};
	/** A check is filed, or what was put back is noted; only what was open of it is still there. `system` where that refused. */
	'not-cleared': {readonly file: string; readonly id: string; readonly system: string | undefined};
	/** It is written, whole; only the other name under which that was done could not be removed. */
	'part-left': OnFile & {readonly left: string};
	'not-read': OfSystem;
	'not-removed': OfSystem;
	/** A file is there already; `mayForce` where an option of the command line can ask for overwriting it. */
	'target-there': {readonly file: string; readonly option: PlaceOption; readonly mayForce: boolean};
	'target-not-plain': OnFile & {readonly option: PlaceOption};
	/** An export is wanted as a plain file. */
	'source-not-plain': {readonly file: string};
};
export type StoreFault = Said<StoreFaultValues>;

/** A value that JSON cannot hold, and where it stands: 'content.a[0]'. */
export type FoundValue = {
	readonly at: string;
	readonly found: number | 'missing' | 'bigint' | 'function' | 'symbol' | 'forbidden-key';
};
