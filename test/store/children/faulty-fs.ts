import fs from 'node:fs';
import path from 'node:path';

/** How the call with the number `at`, counted from arming, goes wrong. */
export type Fault = {
	readonly at: number;
	readonly kind: 'error' | 'short' | 'kill' | 'look';
	readonly code?: string;
	/** All later calls fail too. */
	readonly sticky?: boolean;
	/** Called before the call, which then goes on; for the kind of that name. */
	readonly look?: () => void;
};

/** A process killed at a call that only reads is one killed at the next that writes. */
const READING = new Set(['accessSync', 'fstatSync', 'lstatSync', 'readFileSync', 'readSync', 'readdirSync']);

const CALLS = [
	'accessSync',
	'chmodSync',
	'closeSync',
	'copyFileSync',
	'fstatSync',
	'fsyncSync',
	'linkSync',
	'lstatSync',
	'mkdirSync',
	'openSync',
	'readFileSync',
	'readSync',
	'readdirSync',
	'renameSync',
	'rmSync',
	'unlinkSync',
	'writeFileSync',
	'writeSync',
] as const;

let fault: Fault | undefined;
let count = 0;

/** Counts from one again; `undefined` lets all calls through. */
export const arm = (next: Fault | undefined): void => {
	fault = next;
	count = 0;
};

/** Whether the armed fault has come up. */
export const hasHit = (): boolean => fault !== undefined && count >= fault.at;

const isDue = (name: string): boolean => {
	if (fault === undefined || (['kill', 'look'].includes(fault.kind) && READING.has(name))) return false;
	if (fault.kind === 'short' && name !== 'writeSync') return false;
	count++;
	return count === fault.at || (fault.sticky === true && count > fault.at);
};

type Call = (...parameters: unknown[]) => unknown;

const wrap =
	(name: string, call: Call): Call =>
	(...parameters) => {
		if (!isDue(name)) return call(...parameters);
		if (fault?.kind === 'kill') process.kill(process.pid, 'SIGKILL');
		if (fault?.kind === 'look') {
			const looked = fault;
			fault = undefined;
			looked.look?.();
			fault = looked;
			return call(...parameters);
		}
		if (fault?.kind === 'short') {
			const [descriptor, text] = parameters;
			if (typeof text !== 'string') return call(...parameters);
			return call(descriptor, text.slice(0, text.length / 2), 0);
		}
		const code = fault?.code ?? 'EIO';
		throw Object.assign(new Error(`${code}: invented fault, ${name}`), {code});
	};

/** Puts itself before the file calls of this process. To be called before conf is loaded, which keeps what it finds. */
export const install = (): void => {
	for (const name of CALLS) {
		const call: unknown = Reflect.get(fs, name);
		if (typeof call === 'function')
			Reflect.set(
				fs,
				name,
				wrap(name, (...parameters) => Reflect.apply(call, fs, parameters)),
			);
	}
};

/** From now on keeps in `root`, numbered from 1, what a folder holds before each call that writes: what a process killed there leaves. */
export const keepBeforeEachCall = (folder: string, root: string): void => {
	let number = 0;
	const look = () => fs.cpSync(folder, path.join(root, String(++number)), {recursive: true, preserveTimestamps: true});
	arm({at: 1, kind: 'look', sticky: true, look});
};

/** Either keeps what a process killed at each call leaves of a folder and beside it, or, told the number of a call, is killed there. */
export const stopOrKeep = (folder: string, {root, killAt}: {readonly root: string; readonly killAt: string}): void => {
	if (killAt === '') keepBeforeEachCall(path.dirname(folder), root);
	else arm({at: Number(killAt), kind: 'kill'});
};
