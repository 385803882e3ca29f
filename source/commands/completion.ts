import {printOut} from './print.js';
import type {Shell} from './shell-words.js';

/**
 * The scripts know nothing of the program: at each Tab they ask the installed one, so they never go out of date. Where
 * it has no candidates, names of files are completed.
 */
const scripts: Readonly<Record<Shell, string>> = {
	bash: `# Completion of armdrift for bash: eval "$(armdrift completion bash)"
_armdrift() {
	local candidate
	COMPREPLY=()
	while IFS= read -r candidate; do
		COMPREPLY+=("$candidate")
	done < <("$1" complete bash -- "\${COMP_LINE:0:COMP_POINT}" "$2" 2>/dev/null)
}
complete -o default -F _armdrift armdrift
`,
	zsh: `#compdef armdrift
# Completion of armdrift for zsh: source <(armdrift completion zsh), or keep it as _armdrift in a folder of fpath.
_armdrift() {
	local -a candidates
	candidates=("\${(@f)$(command armdrift complete zsh -- "\${(@Q)words[2,CURRENT-1]}" "$PREFIX" 2>/dev/null)}")
	if [[ -n "$candidates[1]" ]]; then
		_describe -V 'armdrift' candidates
	else
		_files
	fi
}
if [[ "$funcstack[1]" = _armdrift ]]; then
	_armdrift "$@"
else
	compdef _armdrift armdrift
fi
`,
	fish: `# Completion of armdrift for fish: armdrift completion fish | source
function __armdrift_complete
	set -l words (commandline -opc)
	set -e words[1]
	set -l current (commandline -ct)
	set -l found (command armdrift complete fish -- $words "$current" 2>/dev/null)
	if test (count $found) -gt 0
		printf '%s\\n' $found
	else
		__fish_complete_path "$current"
	end
end
complete -c armdrift -f -a '(__armdrift_complete)'
`,
};

/** `armdrift completion`: the script for a shell. @returns exit status */
export const runCompletion = (shell: Shell): Promise<number> => printOut(scripts[shell]);
