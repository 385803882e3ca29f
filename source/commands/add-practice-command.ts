import type {Command} from 'commander';

type Leave = (status: number) => void;
type Options = {readonly prove?: string; readonly seed?: string; readonly arms?: boolean};

/** `practice`: invented arms whose hidden truth is known, so that the figures can be held against it. */
export function addPracticeCommand(program: Command, leave: Leave): void {
	program
		.command('practice')
		.description('prove the figures on many invented arms')
		.allowExcessArguments(false)
		.option('--prove <count>', 'probe so many random arms and print how often the figures are right')
		.option('--seed <number>', 'another seed gives other arms, the same seed the same')
		.option('--arms', 'list the practice arms')
		.action(async ({prove, seed, arms}: Options, command: Command) => {
			if (prove !== undefined) {
				const {runPracticeProve} = await import('./practice-prove.js');
				return leave(await runPracticeProve({prove, seed}));
			}
			if (!arms) return command.error('error: say what to do with the invented arms: --prove COUNT or --arms');
			const {printPracticeArms} = await import('./practice-arms.js');
			leave(await printPracticeArms());
		});
}
