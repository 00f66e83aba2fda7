import {Argument, type Command, Option} from 'commander'
import {type CompareFormat, compareFormats} from '../report/change-report.ts'
import type {ExitCode} from './exit-codes.ts'
import {sharedOptions} from './shared-options.ts'

const help = `
Examples:
  scalepan compare main                      what moved since the branch main
  scalepan compare HEAD~1                    what the last commit moved
  scalepan compare ../last-year/content      against another folder
  scalepan compare main --format markdown    a table for a pull request
`

/** Which figures moved since an earlier state. */
export function addCompare(root: Command, end: (code: ExitCode) => void): void {
  root
    .command('compare')
    .summary('which figures moved since an earlier state, and why')
    .description(
      'Shows which computed figures moved since a git revision or against another folder, by how much, and which line, food or label did it.',
    )
    .addArgument(new Argument('<earlier>', 'a folder, or a git revision such as main or HEAD~1'))
    .option('--content <dir>', 'folder of the cookbook', 'content')
    .addOption(
      new Option('--format <format>', 'how to print it').choices(compareFormats).default('text'),
    )
    .addHelpText('after', help)
    .action(
      async (
        earlier: string,
        options: {content: string; format: CompareFormat},
        command: Command,
      ) => {
        const {compareCommand} = await import('./compare-command.ts')
        end(await compareCommand(earlier, {...options, ...sharedOptions(command)}))
      },
    )
}
