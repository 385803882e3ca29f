/** The terminal: why a face cannot be shown, and how the program stopped. */
export const terminal = {
	noTerminal:
		'This needs a terminal for both input and output; use --plain to answer line by line (answers may be piped), or "armdrift compute" for figures from a file.',
	tooOldNode: ({wanted, found}: {readonly wanted: string; readonly found: string}) =>
		`armdrift needs Node ${wanted} or newer; this is Node ${found}.`,
	ownFault: ({message}: {readonly message: string}) => `armdrift stopped by a fault of its own: ${message}`,
};
