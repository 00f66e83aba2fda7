import type {Command} from 'commander'

/**
 * A script for bash that completes commands, their options and choices (Bash Reference Manual,
 * "Programmable Completion"); anything else is completed as a file name.
 */
export function bashCompletion(root: Command): string {
  const cases = commandsBelow(root, '').map(
    ({path, words}) => `    '${path}') words='${words.join(' ')}' ;;`,
  )
  return `_scalepan() {
  local current="\${COMP_WORDS[COMP_CWORD]}" path='' words='' index
  for ((index = 1; index < COMP_CWORD; index++)); do
    case " $(_scalepan_words "$path") " in
      *" \${COMP_WORDS[index]} "*) [[ \${COMP_WORDS[index]} == -* ]] || path="$path \${COMP_WORDS[index]}" ;;
    esac
  done
  COMPREPLY=($(compgen -W "$(_scalepan_words "$path")" -- "$current"))
}
_scalepan_words() {
  local words=''
  case "$1" in
${cases.join('\n')}
  esac
  printf '%s' "$words"
}
complete -o default -F _scalepan scalepan
`
}

interface Completed {
  /** Names of the commands so far, each behind a space: \` new recipe\`. */
  readonly path: string
  /** What may come next; none has a blank or a quote. */
  readonly words: readonly string[]
}

function commandsBelow(command: Command, path: string): readonly Completed[] {
  const {commands, options, registeredArguments} = command
  const words = [
    ...commands.map((one) => one.name()),
    ...registeredArguments.flatMap(({argChoices = []}) => argChoices),
    ...options.flatMap(({long}) => (long ? [long] : [])),
    '--help',
  ]
  return [{path, words}, ...commands.flatMap((one) => commandsBelow(one, `${path} ${one.name()}`))]
}
