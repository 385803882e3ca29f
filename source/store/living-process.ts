import fs from 'node:fs';
import {codeOf} from './describe-fault.js';

const read = (file: string): string => {
	try {
		return fs.readFileSync(file, 'utf8');
	} catch {
		return '';
	}
};

/** State letter and start time in ticks since boot: fields 3 and 22 of proc(5), after the name in brackets. */
const linuxFacts = (pid: number): {readonly state: string; readonly ticks: string} | undefined => {
	const stat = read(`/proc/${pid}/stat`);
	const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
	const [state, ticks] = [fields[0], fields[19]];
	return stat === '' || state === undefined || ticks === undefined ? undefined : {state, ticks};
};

/** When a process started, so that a later one of the same number is told from it; `''` where the system does not say. */
export const startOf = (pid: number): string => {
	const facts = linuxFacts(pid);
	const boot = read('/proc/sys/kernel/random/boot_id').trim();
	return facts === undefined || boot === '' ? '' : `${boot}:${facts.ticks}`;
};

/** Whether the process that was `pid` and started at `start` still lives on this computer. A stopped one lives. */
export const isLiving = (pid: number, start: string): boolean => {
	try {
		process.kill(pid, 0);
	} catch (error) {
		if (codeOf(error) === 'ESRCH') return false;
	}
	if (linuxFacts(pid)?.state === 'Z') return false;
	const now = startOf(pid);
	return start === '' || now === '' || start === now;
};
