import type {Completed} from './completed-commands.ts'

/**
 * A script for bash that completes commands, their options and choices, and recipes by their slugs
 * (Bash Reference Manual, "Programmable Completion"); anything else is completed as a file name.
 * Only a file named as a slug is offered: `compgen -W` runs what a name in its list says.
 */
export function bashCompletion(commands: readonly Completed[]): string {
  const paths = commands.filter(({path}) => path !== '').map(({path}) => `'${path}'`)
  const cases = commands.map(({path, words, takesRecipe}) => {
    const offered = words.map(({word}) => word).join(' ')
    return `    '${path}') words="${offered}${takesRecipe ? ' $(_scalepan_recipes)' : ''}" ;;`
  })
  return `_scalepan() {
  local current="\${COMP_WORDS[COMP_CWORD]}" path='' words='' index
  for ((index = 1; index < COMP_CWORD; index++)); do
    case "$path \${COMP_WORDS[index]}" in
      ${paths.join('|')}) path="$path \${COMP_WORDS[index]}" ;;
    esac
  done
  COMPREPLY=($(compgen -W "$(_scalepan_words "$path")" -- "$current"))
}
_scalepan_recipes() {
  local file
  for file in content/recipes/*.md; do
    file="\${file##*/}" file="\${file%.md}"
    [[ $file == *[!a-z0-9-]* ]] || printf '%s ' "$file"
  done
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
