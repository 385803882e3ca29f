import {readdirSync, readFileSync} from 'node:fs';
import path from 'node:path';
import * as z from 'zod/mini';
import {recordSchema} from '../../source/results/record.js';

const stored = z.looseObject({record: recordSchema});

/** Ids of the filed checks of a data folder, oldest first. */
export const filedIds = (dataDir: string): string[] =>
	readdirSync(path.join(dataDir, 'checks'))
		.filter((name) => name.endsWith('.json'))
		.map((name) => name.replace('.json', ''))
		.sort();

/** A filed check as it lies on the disk. */
export const filedCheck = (dataDir: string, id: string) =>
	stored.parse(JSON.parse(readFileSync(path.join(dataDir, 'checks', `${id}.json`), 'utf8'))).record;

/** A filed check without what differs from one sitting to the next: its id and all times. */
export const bareCheck = (saved: unknown): unknown =>
	JSON.parse(JSON.stringify(saved, (key, value) => (/^at$|At$|^id$/.test(key) ? undefined : value)));
