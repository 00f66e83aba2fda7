import {Argument, type Command} from 'commander'
import {bashCompletion} from './bash-completion.ts'
import {type Completed, completedCommands} from './completed-commands.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import {fishCompletion} from './fish-completion.ts'
import {print} from './output.ts'
import {zshCompletion} from './zsh-completion.ts'

const shells = ['bash', 'zsh', 'fish'] as const

type Shell = (typeof shells)[number]

const scripts: Readonly<Record<Shell, (commands: readonly Completed[]) => string>> = {
  bash: bashCompletion,
  zsh: zshCompletion,
  fish: fishCompletion,
}

const completionHelp = `
Examples:
  eval "$(scalepan completion bash)"                 for this session
  scalepan completion bash >> ~/.bash_completion     for every one
  eval "$(scalepan completion zsh)"                  in ~/.zshrc, behind compinit
  scalepan completion fish > ~/.config/fish/completions/scalepan.fish
`

/** The command that prints what a shell needs to complete the others. Added last: it knows them. */
export function addCompletion(root: Command, end: (code: ExitCode) => void): void {
  root
    .command('completion')
    .summary('print a script that completes commands in a shell')
    .description(
      'Prints a script that lets a shell complete commands, options and the slugs of recipes.',
    )
    .addArgument(new Argument('<shell>', 'the shell').choices(shells))
    .addHelpText('after', completionHelp)
    .action((shell: Shell) => {
      print(scripts[shell](completedCommands(root)))
      end(exitCodes.fine)
    })
}
