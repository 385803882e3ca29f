import type {Topic} from '../topics.js';

/** The arm over the years. */
export const years: Topic = {
	name: 'years',
	title: 'the next check, comparing with earlier ones, arms and past checks',
	blocks: [
		'A check is worth most when you can compare it. "armdrift recheck" (or re-check on the first screen) repeats the last check of the arm that is due first. Arm and tools are filled in; one question asks whether they are still true. All that hands do at the deck is asked again.',
		{lines: ['armdrift --arm "north deck"', 'armdrift recheck "north deck"', 'armdrift due', 'armdrift list']},
		"First it asks what was done since; mark as much as is so. A new check of an arm on file asks it too. What you mark begins a new stretch of its history. Note what was done on any other day in the profile of the arm, under what was done to it. You can strike it out there. While you take the rounds, last time's friction stands beside this time's. The check ends with what changed, at each radius:",
		{
			rows: [
				['not changed', 'a difference of half a percent of the tracking force or less'],
				['changed', 'more than that, and more than both ± explain, with 99 % confidence'],
				['perhaps', 'the same with 95 %: probe once more, the same day'],
				['not comparable', 'another effective length, loading or radius: the screen says which'],
			],
		},
		"Where the level was read both times, the arm's own pulls are compared (pull less tilt's share). They are compared as forces, so another tracking force is no change. The ± of each check holds its setting up.",
		'From the fifth check of one stretch on, the program looks for a trend over time and with temperature. It tells of a trend only where its 99 % interval leaves zero out. Where the stretch began with something that was done, it says how far the pull stepped there. Season and drift look alike until the dates lie in three quarters of the year. Until then the program says so.',
		'"armdrift due" lists the arms by the day of their next check. That is six months on (common practice, no source). It is three where the leads are stiff or in a free loop. It is one where something changed, is undecided, or must be put right. The command ends with 10 when an arm is due, else with 0:',
		{lines: ['armdrift due --quiet; [ $? -eq 10 ] && echo "an arm is due"']},
		'Arms on the first screen lists every arm, the one due first on top. If there are many, type part of a name. The page of an arm shows its last verdict, its next day and its history. From there you go to a re-check, the put-back list, the report, past checks and the profile.',
		'You can narrow past checks to an arm, a year or a verdict. You can set two checks of an arm side by side. Nothing that was filed is changed later. Mark a check void, with a reason, if it should not count. It counts again when you take that back. You can rename, correct and set aside profiles; past checks keep what they were made with. Only "armdrift delete" takes an arm away with all its checks. First you type its name, and a back-up is written.',
		'Type the name of your shop in the settings. Checks then ask for the customer and the complaint, for the sheet of the customer. Without a shop neither is asked; both stand in the list of steps.',
	],
};
