import {StoreError} from './store-error.js';
import type {PlaceOption, Thing} from './store-fault.js';

/** The system's short name of an error (`ENOSPC`), where it has one. */
export const codeOf = (error: unknown): string | undefined =>
	error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : undefined;

const unlessOurs = (error: unknown, ours: (system: string) => StoreError): StoreError =>
	error instanceof StoreError ? error : ours(codeOf(error) ?? String(error));

/**
 * The error for a file that could not be written.
 * @param option the one that names another place for it
 */
export const saveFault = (thing: Thing, file: string, error: unknown, option: PlaceOption = '--data'): StoreError =>
	unlessOurs(
		error,
		(system) => new StoreError('unwritable', {id: 'not-saved', values: {thing, file, system, option}}, error),
	);

/** The error for a file that could not be read. */
export const readFault = (thing: Thing, file: string, error: unknown): StoreError =>
	unlessOurs(error, (system) => new StoreError('unreadable', {id: 'not-read', values: {thing, file, system}}, error));

/** The error for a file that could not be removed. */
export const removeFault = (thing: Thing, file: string, error: unknown): StoreError =>
	unlessOurs(
		error,
		(system) => new StoreError('unwritable', {id: 'not-removed', values: {thing, file, system}}, error),
	);
