// Preloaded into the program: says at its end which files V8 had to compile although something was kept for them.
const {writeSync} = require('node:fs');
const vm = require('node:vm');

const files = [];
vm.Script = class extends vm.Script {
	constructor(text, options) {
		super(text, options);
		files.push({isKept: options.cachedData !== undefined, isRejected: this.cachedDataRejected === true});
	}
};
process.on('exit', () => writeSync(3, JSON.stringify(files)));
