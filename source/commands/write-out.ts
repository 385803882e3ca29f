let isWatched = false;

/** Without a listener a full disk or a closed pipe would end the process with a stack trace. */
export function watchOutput(): void {
	if (isWatched) return;
	isWatched = true;
	for (const stream of [process.stdout, process.stderr]) stream.on('error', () => {});
}

/** Writes to standard output. @returns the name of the system's error where that failed: `EPIPE`, `ENOSPC` */
export function writeOut(text: string | Uint8Array): Promise<string | undefined> {
	watchOutput();
	return new Promise((resolve) => {
		process.stdout.write(text, (error) => {
			if (!error) return resolve(undefined);
			resolve('code' in error ? String(error.code) : error.message);
		});
	});
}
