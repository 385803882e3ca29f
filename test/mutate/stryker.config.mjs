import {tmpdir} from 'node:os';
import path from 'node:path';

/** All that a run writes stands here, outside the project. */
const folder = path.join(tmpdir(), 'armdrift-mutate');

export default {
	mutate: [
		'source/measures/**/*.ts',
		'source/results/*-rows.ts',
		'source/results/bias/rows.ts',
		'source/results/diagnosis-facts.ts',
		'source/procedure/read-number.ts',
		'source/procedure/read-signed.ts',
		'source/procedure/typed-text.ts',
		'source/procedure/read-answer.ts',
	],
	// A sentence may be worded anew without any figure being wrong; tests of whole pages hold the words.
	mutator: {excludedMutations: ['StringLiteral']},
	testRunner: 'vitest',
	vitest: {configFile: 'test/mutate/vitest.config.ts'},
	coverageAnalysis: 'perTest',
	timeoutMS: 60_000,
	disableTypeChecks: false,
	concurrency: 1,
	incremental: true,
	incrementalFile: path.join(folder, 'incremental.json'),
	tempDirName: path.join(folder, 'sandbox'),
	cleanTempDir: 'always',
	ignorePatterns: ['dist'],
	reporters: ['clear-text', 'json'],
	clearTextReporter: {allowColor: false, logTests: false, reportTests: false},
	jsonReporter: {fileName: path.join(folder, 'mutation.json')},
	logLevel: 'warn',
	allowConsoleColors: false,
};
