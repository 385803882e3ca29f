import type {Nothing, Said} from '../said.js';
import type {Quantity, UnitId} from '../units.js';
import type {SideWord} from './step.js';

/** What a number lacked; with its two sides where it wants one of them too. */
type Wanted = {readonly unit: UnitId; readonly sides?: SidesWanted | undefined};
export type SidesWanted = readonly [SideWord, SideWord];

/** Why a text is no number: each by its id, with what was typed and what was wanted. */
export type NumberRefusalValues = {
	'no-number-typed': Wanted;
	'not-a-number': Wanted & {readonly typed: string};
	'more-than-one-mark': Wanted & {readonly typed: string};
	'unit-not-known': {readonly tail: string; readonly quantity: Quantity; readonly sides?: SidesWanted | undefined};
	'too-many-digits': Wanted & {readonly typed: string};
};

/** Why typed text was not taken. Ends of what is believable are in the base unit. */
export type TypedRefusalValues = NumberRefusalValues & {
	'gauge-sign-counts': Nothing;
	'two-sides': {readonly typed: string};
	'minus-and-word': {readonly word: SideWord};
	'not-believable': {
		readonly typed: string;
		readonly least: number;
		readonly most: number;
		readonly unit: UnitId;
		/** The number and the unit in which it would be believable. */
		readonly meant: {readonly entered: number; readonly unit: UnitId} | undefined;
	};
	'no-name': Nothing;
	'control-characters': Nothing;
	'too-long': {readonly characters: number; readonly most: number};
	'not-in-list': {readonly options: number};
	/** It cannot be chosen beside others. */
	'stands-alone': {readonly name: string};
	'not-yes-or-no': Nothing;
	'no-clock-time': {readonly typed: string};
	'not-by-text': Nothing;
};

export type NumberRefusal = Said<NumberRefusalValues>;
export type TypedRefusal = Said<TypedRefusalValues>;
