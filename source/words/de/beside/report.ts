/** The report of a filed check, written from its page. */
export const report = {
	write: 'write its report',
	/** The whole path, so that it is found from anywhere. */
	written: ({file}: {readonly file: string}) => `Report: ${file}`,
};
