import {StoreError} from './store-error.js';
import type {PlaceOption, StoreFault, Thing} from './store-fault.js';

/** The system's short name of an error (`ENOSPC`), where it has one. */
export const codeOf = (error: unknown): string | undefined =>
	error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : undefined;

type Failed = 'unreadable' | 'unwritable';

const unlessOurs = (error: unknown, code: Failed, fault: (system: string) => StoreFault): StoreError =>
	error instanceof StoreError ? error : new StoreError(code, fault(codeOf(error) ?? String(error)), error);

/**
 * The error for a file that could not be written.
 * @param option the one that names another place for it
 */
export const saveFault = (thing: Thing, file: string, error: unknown, option: PlaceOption = '--data'): StoreError =>
	unlessOurs(error, 'unwritable', (system) => ({id: 'not-saved', values: {thing, file, system, option}}));

/** The error for a file that could not be read. */
export const readFault = (thing: Thing, file: string, error: unknown): StoreError =>
	unlessOurs(error, 'unreadable', (system) => ({id: 'not-read', values: {thing, file, system}}));

/** The error for a file that could not be removed. */
export const removeFault = (thing: Thing, file: string, error: unknown): StoreError =>
	unlessOurs(error, 'unwritable', (system) => ({id: 'not-removed', values: {thing, file, system}}));
