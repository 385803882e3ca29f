import {EventEmitter} from 'node:events';
import {describe, expect, test} from 'vitest';
import {type ExitHost, ExitPaths} from '../../source/terminal/exit-paths.js';
import {KeyFeed} from '../../source/terminal/key-feed.js';
import {words} from '../helpers/said.js';

class FakeError extends EventEmitter {
	text = '';
	write(text: string): void {
		this.text += text;
	}
}

/** Stands for the process: notes how it was ended. */
class FakeHost extends EventEmitter implements ExitHost {
	readonly pid = 4711;
	readonly env: Record<string, string | undefined> = {};
	readonly stdin = new EventEmitter();
	readonly stdout = new EventEmitter();
	readonly stderr = new FakeError();
	readonly ends: (number | string)[] = [];
	exit(status: number): void {
		this.ends.push(status);
	}
	kill(_pid: number, signal: NodeJS.Signals): void {
		this.ends.push(signal);
	}
}

class FakeSource extends EventEmitter {
	resume(): void {}
	pause(): void {}
}

const start = ({withFeed = true} = {}) => {
	const host = new FakeHost();
	const feed = new KeyFeed(new FakeSource());
	const paths = new ExitPaths({host, ...(withFeed ? {feed} : {}), partingText: () => 'Saved up to step 3.\n'});
	let hookRuns = 0;
	paths.onLeave(() => hookRuns++);
	paths.install();
	return {host, feed, paths, hookRuns: () => hookRuns};
};

const {ownFault} = words.terminal;

const fault = (code: string) => Object.assign(new Error(`write ${code}`), {code});

describe('Each way out has its status', () => {
	// 128 + signal number, as shells report it (POSIX.1-2017, Shell 2.8.2; numbers from signal.h).
	test.each([
		['SIGINT', 130],
		['SIGTERM', 143],
		['SIGQUIT', 131],
		['SIGHUP', 129],
	])('%s ends with %i', (signal, status) => {
		const {host, hookRuns} = start();
		host.emit(signal);
		expect(host.ends).toEqual([status]);
		expect(hookRuns()).toBe(1);
		expect(host.stderr.text).toBe('Saved up to step 3.\n');
	});

	test('Ctrl+C ends with 130', () => {
		const {host, feed} = start();
		feed.receive('12\u00035\r');
		expect(host.ends).toEqual([130]);
	});

	test('an error that nobody caught is one sentence, 70, and no stack trace', () => {
		const {host} = start();
		host.emit('uncaughtException', new Error('first\nsecond \u001B]0;x\u0007'));
		expect(host.ends).toEqual([70]);
		expect(host.stderr.text).toBe(`${ownFault({message: 'first\\nsecond '})}\nSaved up to step 3.\n`);
	});

	test('with ARMDRIFT_DEBUG=1 the stack trace is there', () => {
		const {host} = start();
		host.env.ARMDRIFT_DEBUG = '1';
		host.emit('unhandledRejection', new Error('oops'));
		expect(host.ends).toEqual([70]);
		expect(host.stderr.text).toMatch(/^\s+at /m);
	});

	test('a closed pipe ends a command quietly with 1', () => {
		const {host} = start({withFeed: false});
		host.stdout.emit('error', fault('EPIPE'));
		expect(host.ends).toEqual([1]);
		expect(host.stderr.text).not.toContain(ownFault({message: ''}).trim());
	});
});

describe('A terminal that is gone', () => {
	// Node 20 dies of a failed assertion when it exits normally then.
	test.each([
		['the input ends', (host: FakeHost) => host.stdin.emit('end')],
		['the input fails', (host: FakeHost) => host.stdin.emit('error', fault('EIO'))],
		['the output fails', (host: FakeHost) => host.stdout.emit('error', fault('EIO'))],
		['a write throws', (host: FakeHost) => host.emit('uncaughtException', fault('EIO'))],
	])('ends the program by the signal itself when %s', (_, happen) => {
		const {host, hookRuns} = start();
		happen(host);
		expect(host.ends).toEqual(['SIGHUP']);
		expect(host.listenerCount('SIGHUP')).toBe(0);
		expect(hookRuns()).toBe(1);
	});
});

test('A second signal changes nothing', () => {
	const {host, hookRuns} = start();
	host.emit('SIGTERM');
	host.emit('SIGINT');
	host.emit('SIGHUP');
	host.stdin.emit('end');
	expect(host.ends).toEqual([143]);
	expect(hookRuns()).toBe(1);
});

test('A hook that throws keeps nobody from leaving, and one that was taken back does not run', () => {
	const {host, paths} = start();
	let runs = 0;
	const takeBack = paths.onLeave(() => runs++);
	paths.onLeave(() => {
		throw new Error('no');
	});
	takeBack();
	host.emit('SIGTERM');
	expect(host.ends).toEqual([143]);
	expect(runs).toBe(0);
});
