import {availableParallelism} from 'node:os';
import {defineConfig} from 'vitest/config';

// Rooms without a disk, a terminal or another process: their tests share one world, so that each module is read in once.
const pure = [
	'test/{measures,procedure,check,results,pages,words,model,count,practice,teaching,reports}/**/*.test.ts',
	'test/{layers,units}.test.ts',
	'test/{screens,plain}/**/*.test.{ts,tsx}',
];

// As Vite has them where nothing is said.
const conditions = ['module', 'node', 'development|production'];

export default defineConfig({
	test: {
		// Against a test that hangs; at a load of twenty the long ones take minutes.
		testTimeout: 180_000,
		hookTimeout: 180_000,
		// More than there are cores: tests of the built program and of the disk wait a good part of their time.
		maxWorkers: Math.ceil(1.5 * availableParallelism()),
		projects: [
			{extends: true, test: {name: 'pure', include: pure, isolate: false, pool: 'threads'}},
			{
				extends: true,
				// With the German words.
				ssr: {resolve: {conditions: ['de', ...conditions]}},
				test: {name: 'german', include: ['test/german/**/*.test.{ts,tsx}'], isolate: false, pool: 'threads'},
			},
			{
				extends: true,
				test: {
					name: 'program',
					include: ['test/**/*.test.{ts,tsx}'],
					exclude: [...pure, 'test/german/**'],
					isolate: false,
					pool: 'forks',
				},
			},
		],
	},
});
