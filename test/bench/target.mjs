import {mkdtempSync, readdirSync, readFileSync, rmSync} from 'node:fs';
import {tmpdir} from 'node:os';
import path from 'node:path';
import {performance} from 'node:perf_hooks';
import {stripVTControlCharacters} from 'node:util';
import {spawn} from '@lydell/node-pty';

const LIMIT_MS = 20_000;
// With these set, Ink or its libraries draw less or differently.
const DROPPED =
	/^(?:CI|CONTINUOUS_INTEGRATION|NO_COLOR|FORCE_COLOR|NODE_ENV|NODE_OPTIONS|DEV|ACCESSIBLE|INK_SCREEN_READER)$/;

const temporary = mkdtempSync(path.join(tmpdir(), 'armdrift-bench-'));
process.on('exit', () => rmSync(temporary, {recursive: true, force: true}));
export const freshFolder = () => mkdtempSync(path.join(temporary, 'folder-'));

export const environment = (extra = {}) => {
	const home = freshFolder();
	const kept = Object.entries(process.env).filter(([name]) => !DROPPED.test(name) && !name.startsWith('XDG_'));
	return {...Object.fromEntries(kept), LC_ALL: 'C.UTF-8', HOME: home, ...extra};
};

const readOr = (file, otherwise) => {
	try {
		return readFileSync(file, 'utf8');
	} catch {
		return otherwise;
	}
};

/** A command on a pseudo-terminal, timed from its start. */
export class Target {
	constructor({name, args, marker, env = {}, rows = 24}) {
		Object.assign(this, {name, args, marker, env, rows});
	}

	start() {
		this.written = '';
		this.bytes = 0;
		this.onData = undefined;
		const options = {name: 'xterm-256color', cols: 80, rows: this.rows, env: environment(this.env), cwd: temporary};
		this.startedMs = performance.now();
		this.pty = spawn(process.execPath, this.args, options);
		this.exited = new Promise((resolve) => {
			this.pty.onExit(() => resolve(performance.now()));
		});
		this.pty.onData((data) => {
			this.written += data;
			this.bytes += Buffer.byteLength(data);
			this.onData?.(performance.now());
		});
		return this;
	}

	/** Milliseconds from the start until the marker was written. */
	firstFrameMs() {
		return new Promise((resolve, reject) => {
			const fail = () =>
				reject(new Error(`${this.name} never showed "${this.marker}": ${JSON.stringify(this.written.slice(-300))}`));
			const timer = setTimeout(fail, LIMIT_MS);
			const look = (nowMs) => {
				if (!stripVTControlCharacters(this.written).includes(this.marker)) return;
				clearTimeout(timer);
				this.onData = undefined;
				resolve(nowMs - this.startedMs);
			};
			this.onData = look;
			look(performance.now());
		});
	}

	/** Milliseconds from a key to the end of the frame that answers it, taken as over after a quiet spell. */
	keyToFrameMs(key, quietMs = 60) {
		return new Promise((resolve, reject) => {
			const sentMs = performance.now();
			let lastMs;
			let timer = setTimeout(() => reject(new Error(`${this.name} drew nothing for a key`)), LIMIT_MS);
			const finish = () => {
				this.onData = undefined;
				resolve(lastMs);
			};
			this.onData = (nowMs) => {
				lastMs = nowMs - sentMs;
				clearTimeout(timer);
				timer = setTimeout(finish, quietMs);
			};
			this.pty.write(key);
		});
	}

	/** Peak memory, processor time and voluntary switches so far, from Linux's /proc; undefined elsewhere. */
	usage() {
		const folder = `/proc/${this.pty.pid}`;
		const status = readOr(`${folder}/status`, '');
		if (status === '') return undefined;
		let cpuMs = 0;
		let wakeups = 0;
		for (const thread of readdirSync(`${folder}/task`)) {
			cpuMs += Number(readOr(`${folder}/task/${thread}/schedstat`, '0').split(' ')[0]) / 1e6;
			wakeups += Number(
				/^voluntary_ctxt_switches:\s+(\d+)/m.exec(readOr(`${folder}/task/${thread}/status`, ''))?.[1] ?? 0,
			);
		}
		return {peakMiB: Number(/VmHWM:\s+(\d+)/.exec(status)?.[1]) / 1024, cpuMs, wakeups};
	}

	async stop() {
		try {
			this.pty.kill('SIGKILL');
		} catch {
			// It has ended by itself.
		}
		await this.exited;
	}
}
