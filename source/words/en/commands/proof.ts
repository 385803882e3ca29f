/** `armdrift practice --prove`. */
export const proof = {
	countWanted: ({most}: {readonly most: number}) => `Wanted: --prove with a whole number from 1 to ${most}.`,
	head: ({
		arms,
		seed,
		seconds,
		innerMm,
		outerMm,
	}: {
		readonly arms: number;
		readonly seed: number;
		readonly seconds: number;
		readonly innerMm: number;
		readonly outerMm: number;
	}) =>
		`${arms} invented arms, seed ${seed}, ${seconds.toFixed(0)} s. A scripted operator probes them at ${innerMm} and ${outerMm} mm,\neach arm in every third way.\n`,
	holding: ({holdingShare, settingUpPct}: {readonly holdingShare: number; readonly settingUpPct: number}) =>
		`How often the stated 95 % interval holds the hidden truth, with the 99 % interval
that chance leaves for that share (it falls short where its upper end is below
${(100 * holdingShare).toFixed(0)} %), and the mean ± and the mean error of the figure, in percent of tracking
force. 'scatter' is the standard deviation of one limit; setting up moves the pull
by ${settingUpPct} %, for each round where it is set anew, else once a radius:
`,
	once: `One round at each radius: how well rounds repeat is then assumed, so the figures
say 'assumed' and promise nothing (no bar):
`,
	restless: ({restlessPct}: {readonly restlessPct: number}) =>
		`The same arms where the side force wanders by ${restlessPct} % meanwhile, as in a draught (no
bar): it narrows the band, and no term of the ± holds that:
`,
	calledGood: ({wronglyGoodShare}: {readonly wronglyGoodShare: number}) =>
		`How often an arm is called good that truly is not (wanted: less than ${(100 * wronglyGoodShare).toFixed(0)} % of
those beyond the usable limits):
`,
	lessons: 'How often the lesson of each practice arm is named:\n',
	anew: 'anew',
	onceARadius: 'once',
	holdingHeads: [
		'set',
		'rounds',
		'step',
		'scatter',
		'n',
		'pull',
		'chance',
		'±',
		'error',
		'band',
		'chance',
		'±',
		'error',
	],
	goodHeads: ['probes', 'not good', 'called good', 'beyond', 'called good', 'off scale'],
	lessonHeads: ['arm', 'finding', 'named'],
	named: ({named, of}: {readonly named: number; readonly of: number}) => `${named} of ${of}`,
	holds: 'The proof holds.\n',
	/** @param fewerThan so many arms would be enough to leave chance out */
	fallsShort: ({short, fewerThan}: {readonly short: readonly string[]; readonly fewerThan: number | undefined}) =>
		`The proof falls short:\n${short.join('\n')}${fewerThan === undefined ? '' : `\nWith fewer than ${fewerThan} arms that may be chance.`}\n`,
};
