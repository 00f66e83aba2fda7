import {Argument, type Command, InvalidArgumentError, Option} from 'commander'
import {parseDay} from '../cookbook/calendar-date.ts'
import {type Aisle, aisles} from '../food/food.ts'
import type {ExitCode} from './exit-codes.ts'

const help = `
Examples:
  scalepan foods find zuchini                          names like it, figures and id
  scalepan foods show "pearl barley"                   all that is known of it
  scalepan foods like tomato-relish --aisle condiments what could be bought in its place
  scalepan foods audit                                 labels and rows to read again
`

/** The commands about foods: the built-in table, the cookbook's own, and tables it brings. */
export function addFoods(root: Command, end: (code: ExitCode) => void): void {
  const foods = root
    .command('foods')
    .summary('find, show, compare and check foods')
    .description('Finds, shows, compares and checks the foods a cookbook can name.')
    .addHelpText('after', help)
  addFind(foods, end)
  addShow(foods, end)
  addLike(foods, end)
  addAudit(foods, end)
}

const contentOption = ['--content <dir>', 'folder of the cookbook', 'content'] as const

function addFind(foods: Command, end: (code: ExitCode) => void): void {
  foods
    .command('find')
    .summary('foods by name, slips of the pen allowed')
    .description('Finds foods by name or part of it, best first, with figures per 100 g and id.')
    .addArgument(new Argument('<words...>', 'the name, or words of it'))
    .option(...contentOption)
    .option('--most <number>', 'how many to print', count, 10)
    .action(async (words: readonly string[], options: {content: string; most: number}) => {
      const {foodsFindCommand} = await import('./foods-find-command.ts')
      end(await foodsFindCommand(words, options))
    })
}

function addShow(foods: Command, end: (code: ExitCode) => void): void {
  foods
    .command('show')
    .summary('all that is known of a food')
    .description('Shows all figures with ±, source, allergens, measures, and who uses the food.')
    .addArgument(new Argument('<food>', 'its name or id'))
    .option(...contentOption)
    .action(async (name: string, options: {content: string}, command: Command) => {
      const {foodsShowCommand} = await import('./foods-show-command.ts')
      end(await foodsShowCommand(name, {...options, color: isColoured(command)}))
    })
}

function addLike(foods: Command, end: (code: ExitCode) => void): void {
  foods
    .command('like')
    .summary('foods with the nearest macros')
    .description(
      'Shows the foods whose protein, fat and carbohydrate per 100 g are nearest to those of a\nfood or of a recipe’s finished dish. "Apart" weighs each gram by its energy.',
    )
    .addArgument(new Argument('<name>', 'a food, or the slug of a recipe'))
    .option(...contentOption)
    .addOption(new Option('--aisle <aisle>', 'only foods of this aisle').choices(aisles))
    .option('--most <number>', 'how many to print', count, 5)
    .action(async (name: string, options: {content: string; most: number; aisle?: Aisle}) => {
      const {foodsLikeCommand} = await import('./foods-like-command.ts')
      end(await foodsLikeCommand(name, options))
    })
}

function addAudit(foods: Command, end: (code: ExitCode) => void): void {
  foods
    .command('audit')
    .summary('labels and table rows that want another look')
    .description(
      'Looks at every label, and every table row in use: figures that do not fit each other, age,\nenergy unlike that of the nearest foods. What it finds may be right and odd: it ends with 0.',
    )
    .option(...contentOption)
    .option('--today <day>', 'count the age of labels to this day', day)
    .action(async (options: {content: string; today?: string}, command: Command) => {
      const {foodsAuditCommand} = await import('./foods-audit-command.ts')
      end(await foodsAuditCommand({...options, color: isColoured(command)}))
    })
}

function isColoured(command: Command): boolean {
  return command.optsWithGlobals().color !== false
}

function count(text: string): number {
  const value = /^[1-9]\d{0,4}$/.test(text) ? Number(text) : Number.NaN
  if (Number.isFinite(value)) return value
  throw new InvalidArgumentError('Expected a whole number from 1 up.')
}

function day(text: string): string {
  const written = parseDay(text)
  if (written.ok) return written.value
  throw new InvalidArgumentError(`Expected ${written.expected}.`)
}
