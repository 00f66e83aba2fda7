import {Argument, Command, Option} from 'commander'
import {type CheckFormat, checkFormats} from '../report/check-formats.ts'
import {addBaking} from './add-baking.ts'
import {addCompare} from './add-compare.ts'
import {addCompletion} from './add-completion.ts'
import {addEditor} from './add-editor.ts'
import {addFit} from './add-fit.ts'
import {addFoods} from './add-foods.ts'
import {addNew} from './add-new.ts'
import {addPictures} from './add-pictures.ts'
import {addPreview} from './add-preview.ts'
import {addPrint} from './add-print.ts'
import {type Example, examples} from './examples-text.ts'
import type {ExitCode} from './exit-codes.ts'
import {sharedOptions} from './shared-options.ts'
import {version} from './version.ts'

const contentOption = ['--content <dir>', 'folder of the cookbook', 'content'] as const

/**
 * Every command with its help. What a command does is loaded when it is called.
 * @param end takes the exit code of the command that ran
 */
export function program(end: (code: ExitCode) => void): Command {
  const root = new Command('scalepan')
    .description(
      'Recomputes every stated figure of a cookbook from its weighed ingredients, and publishes it.',
    )
    .version(version(), '-V, --version', 'print the version')
    .option('--no-color', 'plain text, on a terminal too')
    .option('-q, --quiet', 'errors and results only: no warnings, summaries, progress, next steps')
    .helpOption('-h, --help', 'print this help')
    .helpCommand('help [command]', 'print the help of a command')
    .configureHelp({showGlobalOptions: true})
    .exitOverride()
    .addHelpText('after', examples(rootExamples) + exitCodeHelp)
  addBuild(root, end)
  addPreview(root, end)
  addCheck(root, end)
  addExplain(root, end)
  addFit(root, end)
  addCompare(root, end)
  addFoods(root, end)
  addNew(root, end)
  addPrint(root, end)
  addPictures(root, end)
  addBaking(root, end)
  addEditor(root)
  addCompletion(root, end)
  sayWhereHelpIs(root)
  return root
}

/** A call that was slipped in is answered with the help of its own command. */
function sayWhereHelpIs(command: Command): void {
  command.showHelpAfterError(`See: ${calledAs(command)} --help`)
  for (const one of command.commands) sayWhereHelpIs(one)
}

/** The names that lead to a command: `scalepan new recipe`. */
function calledAs(command: Command): string {
  const {parent} = command
  return [...(parent ? [calledAs(parent)] : []), command.name()].join(' ')
}

function addBuild(root: Command, end: (code: ExitCode) => void): void {
  root
    .command('build')
    .summary('check the cookbook, then write its site')
    .description(
      'Checks the cookbook, then writes its site. An error stops it: nothing is written and the last site stays as it is. Files in the site folder that scalepan did not write are left alone.',
    )
    .option(...contentOption)
    .option('--site <dir>', 'folder the site is written into', 'site')
    .addHelpText('after', examples(buildExamples))
    .action(async (options: {content: string; site: string}, command: Command) => {
      const {buildCommand} = await import('./build-command.ts')
      end(await buildCommand({...options, ...sharedOptions(command)}))
    })
}

function addCheck(root: Command, end: (code: ExitCode) => void): void {
  root
    .command('check')
    .summary('check every figure, write nothing')
    .description('Checks the cookbook and prints what it finds; writes nothing.')
    .addArgument(new Argument('[files...]', 'report on these files only; all are read'))
    .option(...contentOption)
    .addOption(
      new Option('--format <format>', 'how to print what is found')
        .choices(checkFormats)
        .default('text'),
    )
    .option('--fix', 'write the computed figures into `stated`, and units where they are missing')
    .option('--fix-dry-run', 'print what --fix would change, as a diff; write nothing')
    .addHelpText('after', examples(checkExamples))
    .action(
      async (
        files: readonly string[],
        options: {content: string; format: CheckFormat; fix?: boolean; fixDryRun?: boolean},
        command: Command,
      ) => {
        const {checkCommand} = await import('./check-command.ts')
        end(await checkCommand(files, {...options, ...sharedOptions(command)}))
      },
    )
}

function addExplain(root: Command, end: (code: ExitCode) => void): void {
  root
    .command('explain')
    .summary('show where a recipe’s figures come from')
    .description(
      'Shows what each line of a recipe adds, how stated and computed figures compare, and which weighing or label costs most certainty.',
    )
    .addArgument(new Argument('<recipe>', 'its file, slug or title'))
    .option(...contentOption)
    .addOption(
      new Option('--format <format>', 'how to print it').choices(['text', 'json']).default('text'),
    )
    .addHelpText('after', examples(explainExamples))
    .action(
      async (
        recipe: string,
        options: {content: string; format: 'text' | 'json'},
        command: Command,
      ) => {
        const {explainCommand} = await import('./explain-command.ts')
        end(await explainCommand(recipe, {...options, ...sharedOptions(command)}))
      },
    )
}

const rootExamples: readonly Example[] = [
  ['scalepan new cookbook kitchen', 'a cookbook that passes its checks'],
  ['scalepan check', 'is every stated figure still right?'],
  ['scalepan explain barley-pot', 'where its figures come from'],
  ['scalepan build', 'check, then write site/'],
]
const buildExamples: readonly Example[] = [
  ['scalepan build', 'content/ into site/'],
  ['scalepan build --content book --site public', 'other folders'],
]
const checkExamples: readonly Example[] = [
  ['scalepan check', 'the whole cookbook'],
  ['scalepan check content/recipes/barley-pot.md', 'findings in one file'],
  ['scalepan check --format json > report.json', 'figures and findings for a program'],
  ['scalepan check --format github', 'findings at their lines of a pull request'],
  ['scalepan check --fix-dry-run', 'what would change, as a diff'],
]
const explainExamples: readonly Example[] = [
  ['scalepan explain barley-pot', 'by slug'],
  ['scalepan explain content/recipes/barley-pot.md', 'by file'],
  ['scalepan explain barley-pot --format json', 'lines and budget for a program'],
]

const exitCodeHelp = `
Ends with 0 when all is fine, 1 when the checks found errors, 2 when it could not run.
`
