/** The sentences of then; `{name}` stands for a number, `{name:gf}` for one in grams, `{name:a|b}` for one of two words. */
export const sentences: Readonly<Record<string, string>> = {
	'never-crosses-record':
		'With these lengths the stylus reaches only radii from {leastMm} to {mostMm} mm: it never crosses the record.',
	'no-such-arm': 'No arm of this effective length has these two null radii.',
	'pivot-not-believable': 'The pivot distance would come out as {pivotMm} mm; {leastMm} to {mostMm} mm is believable.',
	'offset-not-known':
		'One null radius says where the pivot is only together with the offset angle, which is not known.',
	'radius-out-of-reach':
		'The stylus does not reach a radius of {radiusMm} mm: this arm reaches from {leastMm} to {mostMm} mm.',
	'outer-not-larger': 'The outer radius ({outerMm} mm) must be larger than the inner one ({innerMm} mm).',
	'radius-taken': 'There is a probe at {radiusMm} mm already; choose another radius.',
	'stop-takes-hold': 'The automatic stop takes hold of the arm inside {leastMm} mm; choose {leastMm} mm or more.',
	'middle-not-between':
		'The middle radius must lie between the inner one ({innerMm} mm) and the outer one ({outerMm} mm).',
	'low-force-too-high': 'The lowest force of the range is above the playing force.',
	'high-force-too-low': 'The highest force of the range is below the playing force.',
	'mat-meets-guard': 'With the mat on, a guard this deep would touch it.',
	'level-read-once': "One reading alone does not pass: the level's own error may be larger than the tilt.",
	'tilt-too-much': 'The tilt alone pushes the stylus by {sharePct} %; {allowedPct} % is allowed.',
	'deck-leans': 'The deck leans by {leanDeg}°; {allowedDeg}° is allowed.',
	'guard-mass-not-known': 'The guard was left out and its mass is not known, so the carried force is unknown.',
	'weigh-with-guard': 'Put the guard on and weigh again, without zeroing the scale on it.',
	'force-range-not-known':
		"The cartridge's range is not known, so nobody can say whether {carriedMn:gf} is safe for it.",
	'force-outside-range':
		"The gauge would carry {carriedMn:gf}, {side:below|above} the cartridge's range of {lowMn:gf} to {highMn:gf}.",
	'stylus-height':
		'{stylusMm} mm is too {side:low|high}: the stylus should stand {lowMm} to {highMm} mm above the surface.',
	'guard-too-near': "The guard's underside is only {guardMm} mm above the surface; more than 0.5 mm is needed.",
	'closing-off-scale':
		'The closing round is off scale, though the inner rounds were not: something moved. Probe again.',
	'closing-moved': 'Something moved: the closing round is {movedPct} % away from the inner rounds. Probe again.',
	'not-weighed': 'It was not weighed as played.',
	'playing-force-off':
		'{weighedMn:gf} is {offPct} % {way:more|less} than the playing force of {playingMn:gf}; within {allowedPct} % is wanted.',
};

/** What was not confirmed, by what was said of it. */
export const notConfirmed: Readonly<Record<string, string>> = {
	'With damping in, the readings show the fluid and not the arm.': 'damping-off',
	"While the bias device pulls, its force cannot be told from the arm's own.": 'bias-off',
	'With the bias off there is nothing to read here.': 'bias-on',
	'Lock the arm before anything else is touched.': 'back-lock',
	'The mat is still off.': 'back-mat',
	'The damping is not restored yet.': 'back-damping',
	'The bias device is still out of action.': 'back-bias',
	'The arm is not at its playing height yet.': 'back-height',
	'With the guard on, its mass is in the tracking force and the deck cannot play.': 'back-guard',
	'Level the deck again.': 'back-level',
	'The deck is not ready to play yet.': 'back-covers',
};

/** Lists that were ticked line by line, and what each line left to be done. */
export const linesLeft: Readonly<Record<string, readonly (readonly [line: string, left: string])[]>> = {
	safe: [
		['amplifier', 'Mute or switch off the amplifier before the stylus is handled.'],
		['platter', 'Stop the platter and wedge it gently, so that it cannot creep.'],
		['mains', 'Unplug the mains before anything is opened.'],
		['rest', 'Put the arm in its rest and lay the stylus guard ready.'],
	],
	wires: [
		['upright', 'Set its sideways balance first, the way its maker says; never press the arm down.'],
		['leads', 'Lay the leads as they are used and clear the arm.'],
		['lifter', 'Lower the lifter until daylight shows under the tube.'],
		['rest', 'Turn the clip of the rest out of the way.'],
		['screws', 'Tighten them by hand: arm locked, stylus guarded, headshell held.'],
		['air', 'Switch them off and wait until the air stands still.'],
		['static', 'Touch bare earthed metal, and brush the mat.'],
	],
};

/** The reasons that were offered, by their words. */
export const reasonIds: Readonly<Record<string, string>> = {
	'the deck cannot be levelled here': 'cannot-level',
	'the arm is loaded by a spring': 'spring-loaded',
	'the level cannot be turned round': 'level-cannot-turn',
	'it is known what moved, and it does not matter': 'known-what-moved',
	'time is short': 'time-short',
	'it will be done by someone else, who knows': 'someone-else',
	'it cannot be done here': 'cannot-do-here',
	'the owner wants this force': 'owner-wants-force',
	'the scale is not at hand': 'no-scale',
	'the maker demands power for this check': 'maker-wants-power',
	'a licensed person is in charge': 'licensed-person',
	'steel platter or magnet near the cartridge: the mat must stay on': 'mat-must-stay',
	'no guard is used': 'no-guard',
	'the trough cannot be emptied': 'trough-full',
	'the damper is built into the arm': 'damper-built-in',
	'the device cannot be put out of action': 'bias-stays',
	'its maker forbids unhooking it': 'maker-forbids-unhooking',
	'it is part of the fault that is looked for': 'part-of-fault',
	'cannot be changed here': 'cannot-change-here',
	"the maker's range is for playing; the guard takes it beyond for the probe only": 'guard-only',
	'the maker gives no range': 'no-range',
	'the gauge cannot stand lower or higher': 'gauge-height-fixed',
	'the arm touches elsewhere': 'arm-touches-elsewhere',
	'bumped the deck': 'bumped',
	'read before it had settled': 'not-settled',
	'misread the gauge': 'misread',
	'draught or a door': 'draught',
};
