import * as played from '../helpers/check-turns.js';
import {run} from '../helpers/plain-run.js';
import {earlier} from '../helpers/program-environment.js';
import {titleOf, words} from '../helpers/said.js';
import {answer, asLines, option, type Turn, turn} from '../helpers/walk.js';

const minutesInDay = 24 * 60;

/** What a re-check asks, from what was done since to the probe. */
export const prepareAgain: readonly Turn[] = [
	answer('done-since', '1', option(1, words.options['done-since'].nothing)),
	turn('y', titleOf('still-last-time')),
	...played.makeSafe,
	played.coverStylus,
	...played.matOff,
	...played.readLevel(),
	...played.biasOff,
	...played.lookAlongArm,
	played.weigh,
	played.setHeight,
	...played.letGo,
];

/**
 * An invented arm that hardly moves over the years; both its inner limits so many percent further out, and its inner
 * band so much wider.
 */
export const steady = ({out = 0, wider = 0}: {readonly out?: number; readonly wider?: number} = {}): played.Series => {
	const limits = (inner: number, outer: number): played.Round => [`${inner + out} out`, `${outer + out + wider} out`];
	const turned = (inner: number, outer: number): played.Round => [`-${inner + out}`, `-${outer + out + wider}`];
	return {
		inner: [limits(0.5, 3), turned(1, 3), limits(0.5, 2.5)],
		outer: [
			['0.5 out', '2.5 out'],
			['0.5 out', '2.5 out'],
			['0.5 out', '2 out'],
		],
		closing: limits(0.5, 3),
	};
};

/**
 * Half a year apart: so many days before today, the temperature of the room, and how much wider the band was; the first
 * one a full check.
 */
const visits = [
	[905, '17', 0],
	[722, '24', 0],
	[540, '18', 0.5],
	[358, '23', 0],
	[175, '19', 0.5],
] as const;

/** Five invented checks of the arm 'north deck' over two years, filed by the built program with its clock set back. */
export function playPastYears(dataDir: string): void {
	visits.forEach(([daysAgo, temperature, wider], index) => {
		const prepared = index === 0 ? [played.start, ...played.prepare] : prepareAgain;
		const turns = [
			...prepared,
			...played.probeAll(steady({wider})),
			wider === 0 ? played.leaveIt : played.readVerdict,
			...played.putBackAt(temperature),
		];
		const args = index === 0 ? ['--plain'] : ['--plain', 'recheck'];
		const {status, faults} = run(dataDir, args, {input: asLines(turns), env: earlier(daysAgo * minutesInDay)});
		if (status !== 0) throw new Error(`past check ${index + 1} ended with ${status}: ${faults}`);
	});
}
