import type {Command} from 'commander'
import {examples} from './examples-text.ts'
import type {ExitCode} from './exit-codes.ts'

const picturesHelp = `
Pages then load the one that fits the screen. Files that are there stay as they are: to make one
anew, delete it. The build itself makes no pictures, so it stays fast and the same everywhere.
`

const picturesExamples = [
  ['scalepan pictures', 'beside images/bowl.jpg: bowl.1600.jpg, bowl.800.jpg, bowl.400.jpg'],
] as const

/** The command that makes smaller pictures. */
export function addPictures(root: Command, end: (code: ExitCode) => void): void {
  root
    .command('pictures')
    .summary('make smaller ones of large photographs')
    .description(
      'Makes smaller ones of the JPEG photographs in images/, beside them: 1600, 800 and 400 pixels wide, in their colours and without what the camera noted.',
    )
    .option('--content <dir>', 'folder of the cookbook', 'content')
    .addHelpText('after', picturesHelp + examples(picturesExamples))
    .action(async ({content}: {content: string}) => {
      const {picturesCommand} = await import('./pictures-command.ts')
      end(await picturesCommand(content))
    })
}
