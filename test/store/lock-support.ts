import {hostname} from 'node:os';
import type {Lock} from '../../source/store/lock-keeper.js';
import {probes} from '../../source/store/process-probes.js';
import {startChild} from './child-process.js';

/** The number of a process that is no more. */
export const deadProcess = async (): Promise<number> => {
	const child = startChild('true', []);
	await child.ended;
	return child.process.pid ?? 0;
};

/** What a lock file says; this process where nothing else is given. */
export const entry = (fields: object): string =>
	JSON.stringify({
		pid: process.pid,
		host: hostname(),
		start: probes.startOf(process.pid),
		since: '2026-11-24T14:32:00.000Z',
		command: 'invented',
		nonce: '0123456789abcdef',
		...fields,
	});

/** Whether the lock was had; gives it back at once. */
export const held = (lock: Lock): boolean => {
	if (lock.held) lock.release();
	return lock.held;
};
