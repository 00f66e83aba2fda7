import {type Command, InvalidArgumentError, Option} from 'commander'
import type {ExitCode} from './exit-codes.ts'
import type {PreviewOptions} from './preview-command.ts'
import {sharedOptions} from './shared-options.ts'

const previewHelp = `
Shows the site as it would be built, from memory: nothing is written. Errors do not stop it; what
is found stands on the page at the figure it concerns. Ctrl-C ends it.

Examples:
  scalepan preview                      the cookbook in content/, at http://127.0.0.1:7250/
  scalepan preview --port 8000          at another port
  scalepan preview --host 192.168.1.20  for a phone on the same network too: anybody there can read it
`

/** The command that shows the site while it is written. */
export function addPreview(root: Command, end: (code: ExitCode) => void): void {
  root
    .command('preview')
    .summary('show the site in a browser, and again on every save')
    .description(
      'Shows the site in a browser on this machine, and makes it again whenever a file is saved.',
    )
    .option('--content <dir>', 'folder of the cookbook', 'content')
    .addOption(
      new Option(
        '--port <number>',
        'port to listen on (default: 7250, or the next one free)',
      ).argParser(portNumber),
    )
    .option('--host <address>', 'an address of this machine that others can reach')
    .addHelpText('after', previewHelp)
    .action(async (options: Omit<PreviewOptions, 'color'>, command: Command) => {
      const {previewCommand} = await import('./preview-command.ts')
      end(await previewCommand({...options, ...sharedOptions(command)}))
    })
}

function portNumber(text: string): number {
  const port = /^\d{1,5}$/u.test(text) ? Number(text) : 0
  if (port >= 1 && port <= 65_535) return port
  throw new InvalidArgumentError('Expected a whole number from 1 to 65535.')
}
