import {Argument, type Command, InvalidArgumentError, Option} from 'commander'
import {type Aisle, aisles} from '../food/food.ts'
import {type Example, examples} from './examples-text.ts'
import type {ExitCode} from './exit-codes.ts'
import type {FoodsFolder} from './foods-folder.ts'
import {sharedOptions} from './shared-options.ts'

interface Call {
  readonly content: string
  readonly format: 'text' | 'json'
}

interface FindCall extends Call {
  readonly most: number
}

interface LikeCall extends FindCall {
  readonly aisle?: Aisle
  /** A recipe's file, slug or title. */
  readonly in?: string
}

const likeExamples: readonly Example[] = [
  ['scalepan foods like feta --aisle dairy', 'per 100 g'],
  ['scalepan foods like feta --in lentil-bowl', 'by what the bowl has of it'],
  ['scalepan foods like "tomato relish" --in lentil-bowl', 'what bought would change'],
]

/** The commands that look foods up; they need no cookbook. */
export function addFoodLookUps(foods: Command, end: (code: ExitCode) => void): void {
  addFind(foods, end)
  addShow(foods, end)
  addLike(foods, end)
}

const contentOption = ['--content <dir>', 'folder of the cookbook', 'content'] as const

function formatOption(): Option {
  return new Option('--format <format>', 'how to print it')
    .choices(['text', 'json'])
    .default('text')
}

/** Where no folder is named, the table that is built in will do. */
function folderOf(command: Command, {content}: Call): FoodsFolder {
  return {content, isContentNamed: command.getOptionValueSource('content') === 'cli'}
}

function addFind(foods: Command, end: (code: ExitCode) => void): void {
  foods
    .command('find')
    .summary('foods by name, slips of the pen allowed')
    .description('Finds foods by name or part of it, best first, with figures per 100 g and id.')
    .addArgument(new Argument('<words...>', 'the name, or words of it'))
    .option(...contentOption)
    .addOption(formatOption())
    .option('--most <number>', 'how many to print', count, 10)
    .action(async (words: readonly string[], options: FindCall, command: Command) => {
      const {foodsFindCommand} = await import('./foods-find-command.ts')
      end(await foodsFindCommand(words, {...options, ...folderOf(command, options)}))
    })
}

function addShow(foods: Command, end: (code: ExitCode) => void): void {
  foods
    .command('show')
    .summary('all that is known of a food')
    .description('Shows all figures with ±, source, allergens, measures, and who uses the food.')
    .addArgument(new Argument('<food>', 'its name or id'))
    .option(...contentOption)
    .addOption(formatOption())
    .action(async (name: string, options: Call, command: Command) => {
      const {foodsShowCommand} = await import('./foods-show-command.ts')
      const shared = sharedOptions(command)
      end(await foodsShowCommand(name, {...options, ...folderOf(command, options), ...shared}))
    })
}

function addLike(foods: Command, end: (code: ExitCode) => void): void {
  foods
    .command('like')
    .summary('foods with the nearest macros')
    .description(
      'Shows the foods whose protein, fat and carbohydrate per 100 g are nearest to those of a food or of a recipe’s finished dish. With --in, takes the amount that a recipe uses, and says what each would change of a serving in its place. "Apart" weighs each gram by its energy.',
    )
    .addArgument(new Argument('<name>', 'a food, or the slug of a recipe'))
    .option(...contentOption)
    .addOption(formatOption())
    .addOption(new Option('--aisle <aisle>', 'only foods of this aisle').choices(aisles))
    .option('--in <recipe>', 'by the amount that this recipe uses of it')
    .option('--most <number>', 'how many to print', count, 5)
    .addHelpText('after', examples(likeExamples))
    .action(async (name: string, call: LikeCall, command: Command) => {
      const options = {...call, ...folderOf(command, call), ...sharedOptions(command)}
      if (call.in === undefined) {
        const {foodsLikeCommand} = await import('./foods-like-command.ts')
        end(await foodsLikeCommand(name, options))
      } else {
        const {foodsLikeInCommand} = await import('./foods-like-in-command.ts')
        end(await foodsLikeInCommand(name, call.in, options))
      }
    })
}

function count(text: string): number {
  const value = /^[1-9]\d{0,4}$/.test(text) ? Number(text) : Number.NaN
  if (Number.isFinite(value)) return value
  throw new InvalidArgumentError('Expected a whole number from 1 up.')
}
