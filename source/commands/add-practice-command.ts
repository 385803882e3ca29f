import {type Command, Option} from 'commander';
import type {PracticeExtent} from '../workbench.js';

type Leave = (status: number) => void;
type Options = {
	readonly on?: string;
	readonly extent?: PracticeExtent;
	readonly prove?: string;
	readonly seed?: string;
	readonly arms?: boolean;
	readonly plain?: boolean;
	readonly color: boolean;
	readonly data?: string;
};

const explained = `
Practice data stay in a folder of their own, marked as practice, and are never mixed with real checks.`;

/** `practice`: a check on an invented arm, and the proof of the figures on many of them. */
export function addPracticeCommand(program: Command, leave: Leave, version: string): void {
	program
		.command('practice')
		.description('practise the check on an invented arm, without a turntable')
		.allowExcessArguments(false)
		.option('--on <which>', 'begin with this invented arm at once, see --arms')
		.addOption(
			new Option(
				'--extent <much>',
				'begin at once: one round at each radius, the whole probe, or the whole check',
			).choices(['once', 'probe', 'whole']),
		)
		.option('--seed <number>', 'another seed gives other chance, the same seed the same')
		.option('--arms', 'list the invented arms')
		.option('--prove <count>', 'probe so many random arms and print how often the figures are right')
		.addHelpText('after', explained)
		.action(async (_own: unknown, command: Command) => {
			const options = command.optsWithGlobals<Options>();
			const {prove, seed, arms} = options;
			if (prove !== undefined) {
				const {runPracticeProve} = await import('./practice-prove.js');
				return leave(await runPracticeProve({prove, seed}));
			}
			if (arms) {
				const {printPracticeArms} = await import('./practice-arms.js');
				return leave(await printPracticeArms());
			}
			const {runPractice} = await import('./practice-command.js');
			leave(await runPractice({...options, version}));
		});
}
