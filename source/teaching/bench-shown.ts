import {type Dialogue, positionOf} from '../check/dialogue.js';
import {issuedOf} from '../pages/issued.js';
import {line, type Shown} from '../pages/shown-lines.js';
import {type BenchState, benchNow, handsAt} from './bench-state.js';
import {gaugedArm} from './gauged-arm.js';
import {instruments} from './instruments.js';
import {readingWanted} from './reading-wanted.js';
import {truthLines} from './truth-lines.js';

/** What an invented bench has to show at a question, before all else; the bench must have followed it there. */
export function benchShown(state: BenchState, dialogue: Dialogue): readonly Shown[] {
	const {step, progress} = positionOf(dialogue);
	if (!step || dialogue.mode.kind === 'steps' || dialogue.mode.kind === 'stop') return [];
	if (step.input.kind === 'verdict') return atVerdict(state, dialogue);
	if (step.id === 'safe')
		return [line('Nothing can break here: arm, deck and stylus are invented. At a real one every line counts.')];
	const wanted = readingWanted(dialogue);
	if (wanted) return [gaugedArm(state.probing, wanted)];
	const seen = instruments[step.id]?.see(benchNow(state, progress.facts));
	const hands = handsAt(state, dialogue);
	return [
		...(state.did?.step === step.id ? [line(state.did.text, 'good')] : []),
		...(seen === undefined ? [] : [line(`On the bench: ${seen}`, 'strong')]),
		...(hands ? [line(`Press ! to ${hands.label}.`)] : []),
	];
}

function atVerdict({notes}: BenchState, {check, mode}: Dialogue): readonly Shown[] {
	if (mode.kind !== 'ask') return [];
	return notes.isRevealed
		? truthLines({...check, practice: notes}, issuedOf(check))
		: [line('Press ! to see what was hidden in this arm, and what to do better.', 'strong')];
}
