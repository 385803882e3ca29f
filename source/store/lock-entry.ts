import * as z from 'zod/mini';
import {probes} from './process-probes.js';
import {readPlainFile} from './read-plain-file.js';
import type {StoreError} from './store-error.js';

const holderSchema = z.object({
	pid: z.int().check(z.positive()),
	host: z.string(),
	/** Its boot and its start in it; empty where the system does not say. */
	start: z.string(),
	/** When the computer was started, in seconds since 1970, as its clock has it; earlier programs did not note it. */
	boot: z.optional(z.number()),
	/** Where its number means this process: containers on one computer count their processes apart. */
	space: z.optional(z.string()),
	since: z.iso.datetime(),
	command: z.string(),
	nonce: z.string().check(z.regex(/^[0-9a-f]{16}$/)),
});

/** Who holds the lock. */
export type Holder = z.infer<typeof holderSchema>;

export type LockEntry =
	| {readonly state: 'free'}
	/** `isSure`: no other process can be meant. */
	| {readonly state: 'held'; readonly identity: string; readonly holder: Holder; readonly isSure: boolean}
	| {readonly state: 'elsewhere'; readonly identity: string; readonly holder: Holder}
	| {readonly state: 'dead'; readonly identity: string; readonly holder: Holder}
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

/** Those that this process made. */
const ownNonces = new Set<string>();

/** The entry of this process; `nonce` tells it from every other one. */
export const newHolder = (now: Date): Holder => {
	const nonce = Array.from({length: 16}, () => Math.floor(Math.random() * 16).toString(16)).join('');
	ownNonces.add(nonce);
	return {
		pid: process.pid,
		host: probes.hostname(),
		start: probes.startOf(process.pid),
		boot: probes.bootSeconds(),
		space: probes.processSpace(),
		since: now.toISOString(),
		command: process.argv.slice(1, 3).join(' ').slice(0, 200),
		nonce,
	};
};

/** A clock that is put right by a hair does not make another computer of it. */
const SAME_BOOT_SECONDS = 2;
const bootOf = (start: string): string => start.split(':')[0] ?? '';

/** Whether an entry is one of this computer. Its name may change with the network that it is in; its last start does not. */
const isOfThisComputer = ({host, start, boot, space}: Holder): boolean => {
	if (host === probes.hostname()) return true;
	if (space !== probes.processSpace()) return false;
	const own = probes.startOf(process.pid);
	if (start !== '' && own !== '') return bootOf(start) === bootOf(own);
	return boot !== undefined && Math.abs(boot - probes.bootSeconds()) <= SAME_BOOT_SECONDS;
};

/** Whether a process of this computer still has the lock. A stopped one has. */
const living = ({pid, start, nonce}: Holder): 'dead' | 'sure' | 'unsure' => {
	if (!probes.isThere(pid)) return 'dead';
	const now = probes.startOf(pid);
	if (start !== '' && now !== '') return start === now ? 'sure' : 'dead';
	// The number may have gone to another process since.
	if (pid === process.pid) return ownNonces.has(nonce) ? 'sure' : 'dead';
	const command = probes.commandOf(pid);
	return command === '' || /node|armdrift/i.test(command) ? 'unsure' : 'dead';
};

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
	if (!isOfThisComputer(holder)) return {state: 'elsewhere', identity, holder};
	const alive = living(holder);
	return alive === 'dead'
		? {state: 'dead', identity, holder}
		: {state: 'held', identity, holder, isSure: alive === 'sure'};
};
