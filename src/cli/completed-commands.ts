import type {Command} from 'commander'

/** A command as a shell completes it. */
export interface Completed {
  /** Names of the commands so far, each behind a space: ` new recipe`; nothing for the first. */
  readonly path: string
  /** Commands, choices and options that may come next. */
  readonly words: readonly CompletedWord[]
  /** Whether a recipe may come next. */
  readonly takesRecipe: boolean
}

export interface CompletedWord {
  /** Without a blank or a quote. */
  readonly word: string
  /** What it does, in a line; empty where the word says it all. */
  readonly does: string
}

/** Every command with what may follow it, the first first. */
export function completedCommands(command: Command, path = ''): readonly Completed[] {
  const {commands, options, registeredArguments} = command
  const words = [
    ...commands.map((one) => ({word: one.name(), does: one.summary() || one.description()})),
    ...registeredArguments
      .flatMap(({argChoices = []}) => argChoices)
      .map((word) => ({word, does: ''})),
    ...options.flatMap(({long, description}) => (long ? [{word: long, does: description}] : [])),
    {word: '--help', does: 'print this help'},
  ]
  const takesRecipe =
    registeredArguments.some((argument) => argument.name() === 'recipe') ||
    options.some(({flags}) => flags.endsWith('<recipe>'))
  return [
    {path, words, takesRecipe},
    ...commands.flatMap((one) => completedCommands(one, `${path} ${one.name()}`)),
  ]
}
