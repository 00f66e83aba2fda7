import {Argument, type Command} from 'commander'
import type {ExitCode} from './exit-codes.ts'
import type {Printable, PrintOptions} from './print-command.ts'
import {sharedOptions} from './shared-options.ts'

const printHelp = `
Prints with a Chromium: the one --browser or CHROMIUM_PATH names, else one on the PATH or where
installers put it, else the package @sparticuz/chromium (x64 Linux). The pages of the site print
from any browser too; page numbers in the contents come with this command.

Examples:
  scalepan print cookbook                     the whole cookbook into cookbook.pdf
  scalepan print cards --sheets               cards to cut out, into cards.pdf
  scalepan print list --plan sunday-batch     what a plan needs, into list.pdf
`

/** The command that makes PDFs. */
export function addPrint(root: Command, end: (code: ExitCode) => void): void {
  root
    .command('print')
    .summary('make a PDF of the cookbook, cards or a shopping list')
    .description(
      'Checks the cookbook, then makes a PDF: with bookmarks, readable aloud, fonts within.',
    )
    .addArgument(new Argument('<what>', 'what to print').choices(['cookbook', 'cards', 'list']))
    .option('--content <dir>', 'folder of the cookbook', 'content')
    .option('--out <file>', 'where the PDF goes (default: named after what is printed)')
    .option('--sheets', 'cards side by side on sheets of paper, to cut and fold')
    .option('--plan <slug>', 'the plan whose list is printed, where there are several')
    .option('--browser <path>', 'the Chromium to print with')
    .option('--no-sandbox', 'run it without its sandbox, as root or in a container must')
    .addHelpText('after', printHelp)
    .action(async (what: Printable, options: Omit<PrintOptions, 'color'>, command: Command) => {
      const {printCommand} = await import('./print-command.ts')
      end(await printCommand(what, {...options, ...sharedOptions(command)}))
    })
}
