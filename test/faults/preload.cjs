// Loaded before the program (node --require): makes one call that changes the disk go wrong, or all from it on.
// FAULT_AT is its number, FAULT_KIND 'kill' or an error code; FAULT_COUNT names a file that is told how many there were.
const fs = require('node:fs');

const {FAULT_AT, FAULT_KIND = '', FAULT_COUNT} = process.env;
const at = Number(FAULT_AT ?? Number.POSITIVE_INFINITY);
let count = 0;

/** Terminals and pipes are no disk. */
const isDisk = (target) => typeof target !== 'number' || target > 2;

for (const name of [
	'writeSync',
	'writeFileSync',
	'fsyncSync',
	'renameSync',
	'linkSync',
	'mkdirSync',
	'copyFileSync',
	'unlinkSync',
	'rmSync',
]) {
	const call = fs[name];
	fs[name] = (...parameters) => {
		if (!isDisk(parameters[0])) return call.apply(fs, parameters);
		count++;
		if (FAULT_KIND === 'kill' && count === at) process.kill(process.pid, 'SIGKILL');
		const isFull =
			FAULT_KIND !== 'kill' && FAULT_KIND !== '' && count >= at && !['unlinkSync', 'rmSync'].includes(name);
		if (isFull)
			throw Object.assign(new Error(`${FAULT_KIND}: no space left on device, ${name}`), {
				code: FAULT_KIND,
				syscall: name,
			});
		return call.apply(fs, parameters);
	};
}

if (FAULT_COUNT !== undefined) {
	const write = fs.appendFileSync;
	process.on('exit', () => write(FAULT_COUNT, String(count)));
}
