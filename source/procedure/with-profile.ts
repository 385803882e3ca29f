import type {Facts} from './facts.js';
import type {Step, StepOf} from './step.js';

/**
 * Puts a 'pick or enter' question before the questions of a profile. The picker is asked while there is something
 * to pick from and the first question is still open; the questions come when one was picked, or there is none.
 */
export function withProfile(picker: StepOf<'profile'>, asked: readonly Step[]): readonly Step[] {
	const kind = picker.input.of;
	const started = (facts: Facts) => asked.some((step) => facts.everAnswered(step.id));
	const onFile = (facts: Facts) => facts.profiles.some((one) => one.kind === kind && !one.setAside);
	return [
		{...picker, when: (facts) => facts.everAnswered(picker.id) || (onFile(facts) && !started(facts))},
		...asked.map(
			(step): Step => ({
				...step,
				profile: kind,
				when: (facts) =>
					(facts.everAnswered(picker.id) || started(facts) || !onFile(facts)) && (step.when?.(facts) ?? true),
			}),
		),
	];
}
