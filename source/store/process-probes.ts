import fs from 'node:fs';
import {hostname, uptime} from 'node:os';
import {codeOf} from './describe-fault.js';

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

/** `ps` of POSIX.1-2017 gives the whole command; `tasklist` of Windows the name of the program. */
const shower = (pid: number): readonly [program: string, ...parameters: string[]] =>
	process.platform === 'win32'
		? ['tasklist', '/FI', ['PID', 'eq', pid].join(' '), '/FO', 'CSV', '/NH']
		: ['ps', '-o', 'args=', '-p', String(pid)];

/** What the lock asks of the system; tests put other systems in its place. */
export const probes = {
	hostname,
	/** When the computer was started, in seconds since 1970, as its clock has it now. */
	bootSeconds: (): number => Math.round(Date.now() / 1000 - uptime()),
	/** Linux counts processes in namespaces (namespaces(7)); elsewhere there is one for all. */
	processSpace(): string {
		try {
			return fs.readlinkSync('/proc/self/ns/pid');
		} catch {
			return '';
		}
	},
	/** Whether a process has that number, and has not ended yet. */
	isThere(pid: number): boolean {
		try {
			process.kill(pid, 0);
		} catch (error) {
			if (codeOf(error) === 'ESRCH') return false;
		}
		return linuxFacts(pid)?.state !== 'Z';
	},
	/** When a process started, so that a later one of the same number is told from it; `''` where the system does not say. */
	startOf(pid: number): string {
		const facts = linuxFacts(pid);
		const boot = textOf('/proc/sys/kernel/random/boot_id').trim();
		return facts === undefined || boot === '' ? '' : `${boot}:${facts.ticks}`;
	},
	/** What runs under a number, as the system shows it; `''` where it does not. */
	commandOf(pid: number): string {
		try {
			const [program, ...parameters] = shower(pid);
			const {execFileSync} = process.getBuiltinModule('node:child_process');
			return execFileSync(program, parameters, {encoding: 'utf8', timeout: 3000, stdio: ['ignore', 'pipe', 'ignore']});
		} catch {
			return '';
		}
	},
};
