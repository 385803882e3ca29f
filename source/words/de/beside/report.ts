/** The report of a filed check, written from its page. */
export const report = {
	write: 'Bericht schreiben',
	/** The whole path, so that it is found from anywhere. */
	written: ({file}: {readonly file: string}) => `Bericht: ${file}`,
};
