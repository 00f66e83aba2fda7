import type {Completed, CompletedWord} from './completed-commands.ts'

/**
 * A script for fish that completes commands, their options and choices with what each does, and
 * recipes by their slugs (fish documentation, "Writing your own completions").
 */
export function fishCompletion(commands: readonly Completed[]): string {
  const paths = commands.filter(({path}) => path !== '').map(({path}) => quoted(path))
  const lines = commands.flatMap(({path, words, takesRecipe}) => {
    const where = `complete -c scalepan -n ${quoted(`__scalepan_at ${quoted(path)}`)}`
    return [
      ...words.map((word) => `${where} ${offered(word)}`),
      ...(takesRecipe ? [`${where} -f -a '(__scalepan_recipes)'`] : []),
    ]
  })
  return `function __scalepan_at
    set -l at ''
    for word in (commandline -opc)[2..-1]
        switch "$at $word"
            case ${paths.join(' ')}
                set at "$at $word"
        end
    end
    test "$at" = "$argv[1]"
end
function __scalepan_recipes
    for file in content/recipes/*.md
        string replace -r '\\.md$' '' (string split '/' $file)[-1]
    end
end
${lines.join('\n')}
`
}

function offered({word, does}: CompletedWord): string {
  const what = word.startsWith('--') ? `-l ${word.slice(2)}` : `-a ${quoted(word)}`
  return does === '' ? what : `${what} -d ${quoted(does)}`
}

function quoted(text: string): string {
  return `'${text.replaceAll('\\', '\\\\').replaceAll("'", "\\'")}'`
}
