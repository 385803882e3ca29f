import {vi} from 'vitest';

export type Printed = {readonly status: number; readonly out: string; readonly faults: string};

/** Runs a command in this process and takes what it prints. */
export async function printedBy(work: () => Promise<number>): Promise<Printed> {
	const printed = {stdout: '', stderr: ''};
	const spies = (['stdout', 'stderr'] as const).map((name) =>
		vi.spyOn(process[name], 'write').mockImplementation((text, ...rest) => {
			printed[name] += String(text);
			for (const one of rest) if (typeof one === 'function') one();
			return true;
		}),
	);
	try {
		return {status: await work(), out: printed.stdout, faults: printed.stderr};
	} finally {
		for (const spy of spies) spy.mockRestore();
	}
}
