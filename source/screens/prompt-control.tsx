import type {ReactNode} from 'react';
import type {Entry} from '../check/entry.js';
import type {View} from '../pages/view.js';
import {Choice} from './inputs/choice.js';
import {Field} from './inputs/field.js';
import {Keyed, keyEntries, keyedLines, Still} from './inputs/keyed.js';
import {Several} from './inputs/several.js';

type PromptControlProps = {
	readonly view: View;
	readonly typed: string;
	readonly rows: number;
	readonly width: number;
	readonly onType: (text: string) => void;
	readonly onEntry: (entry: Entry) => void;
};

/** The control for what is wanted now: one component for each kind of entry. */
export const PromptControl = ({
	view: {prompt, unit},
	typed,
	rows,
	width,
	onType,
	onEntry,
}: PromptControlProps): ReactNode => {
	switch (prompt.kind) {
		case 'field':
			return (
				<Field
					value={typed}
					unit={unit}
					prompt={prompt}
					onChange={onType}
					onSubmit={(text) => onEntry({kind: 'text', text})}
				/>
			);
		case 'choice':
			if (prompt.several)
				return (
					<Several
						options={prompt.options}
						marked={prompt.several.marked}
						rows={rows}
						width={width}
						onEnter={(text) => onEntry({kind: 'text', text})}
					/>
				);
			return (
				<Choice
					options={prompt.options}
					initial={prompt.initial}
					rows={rows}
					width={width}
					onChoose={(id) => onEntry({kind: 'choose', id})}
					onMisfit={(text) => onEntry({kind: 'text', text})}
				/>
			);
		case 'yes-no':
		case 'side': {
			const keys = Object.entries(keyEntries(prompt)).map(([key, entry]) => [key, () => onEntry(entry)]);
			return <Keyed lines={keyedLines(prompt)} width={width} keys={Object.fromEntries(keys)} />;
		}
		case 'still':
			return <Still prompt={prompt} width={width} onEntry={onEntry} />;
		case 'none':
			return null;
	}
};
