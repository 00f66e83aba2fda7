import type {Completed, CompletedWord} from './completed-commands.ts'

/**
 * A script for zsh that completes commands, their options and choices with what each does, and
 * recipes by their slugs (zsh manual, "Completion System"); anything else as a file name.
 */
export function zshCompletion(commands: readonly Completed[]): string {
  const paths = commands.filter(({path}) => path !== '').map(({path}) => quoted(path))
  const cases = commands.map(
    ({path, words, takesRecipe}) =>
      `    ${quoted(path)})\n      offered=(${words.map(offered).join(' ')})${
        takesRecipe ? '\n      offered+=(content/recipes/*.md(N:t:r))' : ''
      } ;;`,
  )
  // `path` is the shell's own list of folders: the commands so far are called `at`.
  return `#compdef scalepan
_scalepan() {
  local at='' index
  local -a offered
  for ((index = 2; index < CURRENT; index++)); do
    case "$at \${words[index]}" in
      ${paths.join('|')}) at="$at \${words[index]}" ;;
    esac
  done
  case "$at" in
${cases.join('\n')}
  esac
  _describe -V scalepan offered || _files
}
if [[ "\${funcstack[1]}" == _scalepan ]]; then _scalepan "$@"; else compdef _scalepan scalepan; fi
`
}

/** A word with what it does behind a colon. */
function offered({word, does}: CompletedWord): string {
  const behind = does.replaceAll(':', '\\:')
  return quoted(behind === '' ? word : `${word}:${behind}`)
}

function quoted(text: string): string {
  return `'${text.replaceAll("'", "'\\''")}'`
}
