import {defineConfig} from 'vitest/config';

// Rooms without a disk, a terminal or another process: their tests share one world, so that each module is read in once.
const shared = {isolate: false, pool: 'threads'} as const;
/** The figures and the check: `npm run test:quick`. */
const quick = [
	'test/{measures,procedure,check,results,pages,words,model,count}/**/*.test.ts',
	'test/{layers,units}.test.ts',
];
const pure = ['test/{practice,teaching,reports}/**/*.test.ts'];
const faces = ['test/{screens,plain}/**/*.test.{ts,tsx}'];

export default defineConfig({
	test: {
		// Against a test that hangs; at a load of twenty the long ones take minutes.
		testTimeout: 180_000,
		hookTimeout: 180_000,
		projects: [
			{extends: true, test: {name: 'quick', include: quick, ...shared}},
			{extends: true, test: {name: 'pure', include: pure, ...shared}},
			{extends: true, test: {name: 'faces', include: faces, ...shared}},
			{
				extends: true,
				test: {
					name: 'program',
					isolate: false,
					pool: 'forks',
					include: ['test/**/*.test.{ts,tsx}'],
					exclude: [...quick, ...pure, ...faces],
				},
			},
		],
	},
});
