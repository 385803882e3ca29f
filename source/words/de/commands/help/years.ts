import type {Topic} from '../topics.js';

/** The arm over the years. */
export const years: Topic = {
	name: 'years',
	title: 'the next check, comparing with earlier ones, arms and past checks',
	blocks: [
		'A check is worth most when it can be compared. "armdrift recheck" (or re-check on the first screen) repeats the last check of the arm that is due first. Arm and tools are filled in and asked about in one question. All that hands do at the deck is asked again.',
		{lines: ['armdrift --arm "north deck"', 'armdrift recheck "north deck"', 'armdrift due', 'armdrift list']},
		"First it asks what was done since, also in a new check of an arm that is on file; you may mark more than one thing. That begins a new stretch of its history. What was done on any other day you note in the profile of the arm (what was done to it), and can strike out there. Last time's friction stands beside this time's while you take the rounds. The check ends with what changed, at each radius:",
		{
			rows: [
				['not changed', 'a difference of half a percent of the tracking force or less'],
				['changed', 'more than that, and both ± cannot explain it, with 99 % confidence'],
				['perhaps', 'the same with 95 %: probe once more, the same day'],
				['not comparable', 'another effective length, loading or radius; it says which'],
			],
		},
		"What is compared are the arm's own pulls (pull less tilt's share) where the level was read both times. They are compared as forces, so another tracking force is no change. The ± of each check holds its setting up.",
		'From five checks of one stretch on the program looks for a trend, over time and with temperature. It tells of one only where its 99 % interval leaves zero out. Where the stretch began with something that was done, it tells the step of the pull there. Until the dates lie in three quarters of the year, the season cannot be told from drift, and it says so.',
		'"armdrift due" lists the arms by the day of their next check: six months on (common practice, no source); three where the leads are stiff or in a free loop; one where something changed, may be decided by more rounds, or was to be put right. It ends with 10 when an arm is due, else with 0:',
		{lines: ['armdrift due --quiet; [ $? -eq 10 ] && echo "an arm is due"']},
		'Arms on the first screen lists every arm, the one due first on top; with many of them type part of a name. The page of an arm shows its last verdict, its next day and its history. It leads to a re-check, its put-back list, its report, its past checks, what was done to it and its profile.',
		'Past checks can be narrowed to an arm, a year or a verdict, and two checks of an arm set side by side. Nothing that was filed is changed later. A check that should not count is marked void, with a reason, and counts again when you take that back. Profiles can be renamed, corrected and set aside; past checks keep what they were made with. Only "armdrift delete" takes an arm away with all its checks, after you typed its name and a back-up was written.',
		'Type the name of a shop in the settings: checks then ask for the customer and the complaint, for the sheet of the customer. Without a shop nothing is asked; both are in the list of steps.',
	],
};
