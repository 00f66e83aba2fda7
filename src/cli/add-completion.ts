import {Argument, type Command} from 'commander'
import {bashCompletion} from './bash-completion.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import {print} from './output.ts'

const completionHelp = `
Examples:
  eval "$(scalepan completion bash)"                 for this session
  scalepan completion bash >> ~/.bash_completion     for every one
`

/** The command that prints what a shell needs to complete the others. Added last: it knows them. */
export function addCompletion(root: Command, end: (code: ExitCode) => void): void {
  root
    .command('completion')
    .summary('print a script that completes commands in a shell')
    .description('Prints a script that lets a shell complete the commands and their options.')
    .addArgument(new Argument('<shell>', 'the shell').choices(['bash']))
    .addHelpText('after', completionHelp)
    .action(() => {
      print(bashCompletion(root))
      end(exitCodes.fine)
    })
}
