import type {Check} from '../check/check.js';
import type {DeckState, PracticeNotes} from '../check/practice-notes.js';
import {openSeries} from '../check/series.js';
import type {ArmSpec} from '../practice/arm-spec.js';
import {type LessonArm, lessonArms} from '../practice/arms.js';
import type {BiasMechanism} from '../practice/bias-torque.js';
import {offPlaces, stepOfRounds} from '../procedure/places.js';

/** The invented arms as a check has them: its force is set with the guard on. */
const lessons = lessonArms.map((one): LessonArm => ({...one, spec: {...one.spec, isSetGuarded: true}}));

/** The invented arm that a practice check is about; undefined for one that this program does not know. */
export const lessonFor = ({arm}: Pick<PracticeNotes, 'arm'>): LessonArm | undefined =>
	lessons.find(({id}) => id === arm);

/** The same, where it must be known. @throws RangeError */
export function lessonOf({arm}: Pick<PracticeNotes, 'arm'>): LessonArm {
	const found = lessonFor({arm});
	if (!found) throw new RangeError(`This program has no practice arm "${arm}".`);
	return found;
}

/** What can be done to an invented deck by hand; each changes what the arm does from then on. */
const deeds = {
	/** Level to what a careful technician reaches. */
	levelled: (spec) => ({...spec, tilt: {leftRightDeg: 0.05, frontBackDeg: -0.05}}),
	'damping-out': (spec) => (spec.damping ? {...spec, damping: {...spec.damping, isIn: false}} : spec),
	'bias-off': (spec) => biasSwitched(spec, false),
	'bias-on': (spec) => biasSwitched(spec, true),
	/** Leads in a wider loop pull half as much, and their twist is taken out of them. */
	'leads-dressed': (spec) => ({
		...spec,
		wire: {
			...spec.wire,
			springMicroNmPerDeg: spec.wire.springMicroNmPerDeg / 2,
			twistMicroNm: 0.2 * spec.wire.twistMicroNm,
		},
	}),
	/** The thread runs nearer to the arm's pivot: the lever travels a quarter as far. */
	'pulley-moved': (spec) => slowerLever(spec),
} as const satisfies Record<string, (spec: ArmSpec) => ArmSpec>;

export type Deed = keyof typeof deeds;

const biasSwitched = (spec: ArmSpec, isOn: boolean): ArmSpec =>
	spec.bias ? {...spec, bias: {...spec.bias, isOn}} : spec;

function slowerLever(spec: ArmSpec): ArmSpec {
	const device = spec.bias?.device;
	if (!spec.bias || device?.kind !== 'weighted-lever') return spec;
	const angle = {...device.angle, degPerDeg: device.angle.degPerDeg / 4};
	return {...spec, bias: {...spec.bias, device: {...device, angle}}};
}

/** Another weight pulls in proportion. */
function weighted(device: BiasMechanism, share: number): BiasMechanism {
	return 'fullMicroNm' in device ? {...device, fullMicroNm: device.fullMicroNm * share} : device;
}

/** The invented arm as its deck stands now. */
export function specOn(lesson: LessonArm, {done, biasWeightG}: DeckState): ArmSpec {
	const isDeed = (id: string): id is Deed => Object.hasOwn(deeds, id);
	const spec = done.filter(isDeed).reduce<ArmSpec>((now, id) => deeds[id](now), lesson.spec);
	if (!spec.bias || biasWeightG === undefined || lesson.biasWeightG === undefined) return spec;
	return {...spec, bias: {...spec.bias, device: weighted(spec.bias.device, biasWeightG / lesson.biasWeightG)}};
}

/** The deck after one deed more. */
export const withDeed = ({done, ...deck}: DeckState, deed: Deed): DeckState => ({...deck, done: [...done, deed]});

/** What of an arm the rounds without bias hang on, beside the bias. */
const stateOf = ({tilt, wire, damping}: ArmSpec): string => JSON.stringify([tilt, wire, damping?.isIn ?? false]);

const isOn = ({bias}: ArmSpec): boolean => bias?.isOn ?? false;

/**
 * Whether hands have put something right at the deck since the rounds of the open series were taken: they hang on a deck
 * that is no more. A bias that was switched on for readings of its own is none of that.
 */
export function isDeckChanged({practice, ...check}: Check): boolean {
	if (!practice) return false;
	const series = openSeries(check);
	const times = offPlaces.flatMap((place) =>
		series[place].flatMap((round) => [round.innerLimit.at, round.outerLimit?.at]),
	);
	const last = practice.readings.findLast(
		({step, at}) => offPlaces.some((place) => step === stepOfRounds(place)) && times.includes(at),
	);
	if (!last) return false;
	const lesson = lessonOf(practice);
	const [then, now] = [specOn(lesson, last.deck), specOn(lesson, practice.deck)];
	return stateOf(then) !== stateOf(now) || (isOn(then) && !isOn(now));
}
