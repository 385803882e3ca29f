/** Stands before the usage: most people want one of these. */
export const examples = `Examples:
  armdrift                      start, or go on where you stopped
  armdrift --arm "north deck"   check this arm straight away
  armdrift recheck              the arm due first, quicker than a full check
  armdrift practice             learn it on an invented arm, no turntable
  armdrift due                  which arms are due, and when
  armdrift --plain < answers    answer line by line, or from a file
  armdrift compute check.json   only the figures
  armdrift help readings        how readings are typed; alone it lists topics
`;

/** How the program ends. */
export const exitStatusRows = [
	['0', 'done'],
	['1', 'could not read or write'],
	['2', 'usage, bad input or no terminal'],
	['3', 'input ended, or left with a check open (saved)'],
	['4', 'another copy is writing'],
	['10', 'something is due'],
	['70', 'internal fault'],
	['130', 'Ctrl+C'],
	['143', 'SIGTERM'],
	['129', 'SIGHUP'],
] as const;

const inLine = exitStatusRows.map(([status, meaning]) => `${status} ${meaning}`).join('; ');

/** Stands behind the options. */
export const exitStatuses = `
${`Exit status: ${inLine}.`.replace(/(.{1,79})(?: |$)/g, '$1\n')}A verdict never changes the status.`;
