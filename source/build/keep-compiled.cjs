// Preloaded into a run of the program by compile-ahead.mjs: at its end, what V8 has compiled of each file is kept beside
// the file, what was called and what was not alike.
const {renameSync, writeFileSync} = require('node:fs');
const vm = require('node:vm');

const {KEPT_AS, AS_SCREEN} = process.env;
const scripts = new Map();

vm.Script = class extends vm.Script {
	constructor(text, options) {
		super(text, options);
		scripts.set(options.filename, this);
	}
};

if (AS_SCREEN) {
	Object.assign(process.stdin, {isTTY: true, setRawMode: () => process.stdin});
	Object.assign(process.stdout, {isTTY: true, columns: 80, rows: 24});
}

process.on('exit', () => {
	for (const [file, script] of scripts) {
		writeFileSync(`${file}.part`, script.createCachedData());
		renameSync(`${file}.part`, `${file}.${KEPT_AS}`);
	}
});
