import fs from 'node:fs';
import {hostname} from 'node:os';
import * as z from 'zod/mini';
import {codeOf} from './describe-fault.js';
import {readPlainFile} from './read-plain-file.js';
import type {StoreError} from './store-error.js';

const textOf = (file: string): string => {
	try {
		return fs.readFileSync(file, 'utf8');
	} catch {
		return '';
	}
};

/** State letter and start time in ticks since boot: fields 3 and 22 of proc(5), after the name in brackets. */
const linuxFacts = (pid: number): {readonly state: string; readonly ticks: string} | undefined => {
	const stat = textOf(`/proc/${pid}/stat`);
	const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
	const [state, ticks] = [fields[0], fields[19]];
	return stat === '' || state === undefined || ticks === undefined ? undefined : {state, ticks};
};

/** When a process started, so that a later one of the same number is told from it; `''` where the system does not say. */
export const startOf = (pid: number): string => {
	const facts = linuxFacts(pid);
	const boot = textOf('/proc/sys/kernel/random/boot_id').trim();
	return facts === undefined || boot === '' ? '' : `${boot}:${facts.ticks}`;
};

/** Whether the process that was `pid` and started at `start` still lives on this computer. A stopped one lives. */
const isLiving = (pid: number, start: string): boolean => {
	try {
		process.kill(pid, 0);
	} catch (error) {
		if (codeOf(error) === 'ESRCH') return false;
	}
	if (linuxFacts(pid)?.state === 'Z') return false;
	const now = startOf(pid);
	return start === '' || now === '' || start === now;
};

const holderSchema = z.object({
	pid: z.int().check(z.positive()),
	host: z.string(),
	start: z.string(),
	since: z.iso.datetime(),
	command: z.string(),
	nonce: z.string().check(z.regex(/^[0-9a-f]{16}$/)),
});

/** Who holds the lock. */
export type Holder = z.infer<typeof holderSchema>;

export type LockEntry =
	| {readonly state: 'free'}
	| {readonly state: 'held' | 'elsewhere' | 'dead'; readonly identity: string; readonly holder: Holder}
	| {readonly state: 'garbage'; readonly identity: string}
	| {readonly state: 'blocked'; readonly error: StoreError};

const LARGEST_ENTRY_BYTES = 4096;

const parseHolder = (bytes: Buffer): Holder | undefined => {
	if (bytes.length > LARGEST_ENTRY_BYTES) return undefined;
	try {
		return holderSchema.safeParse(JSON.parse(bytes.toString('utf8'))).data;
	} catch {
		return undefined;
	}
};

/** The entry of this process; `nonce` tells it from every other one. */
export const newHolder = (now: Date): Holder => ({
	pid: process.pid,
	host: hostname(),
	start: startOf(process.pid),
	since: now.toISOString(),
	command: process.argv.slice(1, 3).join(' ').slice(0, 200),
	nonce: Array.from({length: 16}, () => Math.floor(Math.random() * 16).toString(16)).join(''),
});

/** What a lock file says. `identity` names this very file, so that two processes never mean different ones. */
export const readLockEntry = (file: string): LockEntry => {
	const read = readPlainFile({id: 'lock', values: {}}, file);
	if (read.state === 'missing') return {state: 'free'};
	if (read.state === 'blocked') return {state: 'blocked', error: read.error};
	const holder = read.state === 'bytes' ? parseHolder(read.bytes) : undefined;
	if (holder === undefined) {
		const mark = read.state === 'bytes' ? read.mark : read.damage.id;
		return {state: 'garbage', identity: Buffer.from(mark).toString('hex').slice(0, 120)};
	}
	const identity = holder.nonce;
	if (holder.host !== hostname()) return {state: 'elsewhere', identity, holder};
	return {state: isLiving(holder.pid, holder.start) ? 'held' : 'dead', identity, holder};
};
