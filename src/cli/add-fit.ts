import {Argument, type Command, InvalidArgumentError, Option} from 'commander'
import type {ExitCode} from './exit-codes.ts'
import type {FitOptions} from './fit-command.ts'
import {listed} from './listed-option.ts'
import {sharedOptions} from './shared-options.ts'

const fitHelp = `
A target is about a serving ("energy <= 500 kcal"), about 100 g of the finished dish ("salt <= 0.3 g
per 100 g"), or a relation ("protein >= 20 % of energy", "fibre >= 3 g per 100 kcal",
"protein / carbohydrate >= 0.5").

A change counts as a share of the line's own amount; the sum of them is kept smallest. A line changes
where its amount is a weight, to half or twice of it at most: "150 g" in steps, "9 g (3 cloves)" by
whole cloves, so that both numbers follow. Lines that cannot change are named with the reason.

Examples:
  scalepan fit barley-pot "energy <= 430 kcal"
  scalepan fit barley-pot "energy <= 430 kcal" "protein >= 38 g" --step 5
  scalepan fit barley-pot "energy <= 430 kcal" --for 6,8        whole steps for 6 and 8 as well
  scalepan fit barley-pot "energy <= 430 kcal" --change carrot --change "pearl barley" --write
  scalepan fit flatbreads "energy <= 250 kcal" --keep-ratio "water / bread flour"
  scalepan fit tomato-relish "salt <= 0.8 g per 100 g" --keep-yield
`

/** The command that changes amounts until targets are met. */
export function addFit(root: Command, end: (code: ExitCode) => void): void {
  root
    .command('fit')
    .summary('change amounts as little as possible to meet targets')
    .description(
      'Finds the smallest change of a recipe’s amounts that meets targets, and what each target costs; where they cannot all be met, says by how much. Writes nothing without --write.',
    )
    .addArgument(new Argument('<recipe>', 'its file, slug or title'))
    .addArgument(new Argument('<targets...>', 'what the dish is to have'))
    .option('--content <dir>', 'folder of the cookbook', 'content')
    .addOption(listed('--change <line>', 'an ingredient that may change; others stay (repeatable)'))
    .addOption(listed('--keep <line>', 'an ingredient that stays (repeatable)'))
    .addOption(
      listed('--between <bounds>', 'its least and most grams, "carrot=100..300" (repeatable)'),
    )
    .addOption(
      listed('--keep-ratio <pair>', 'two ingredients in proportion, "water / flour" (repeatable)'),
    )
    .option('--keep-yield', 'what is mixed keeps its weight, for recipes that use the batch')
    .addOption(
      new Option(
        '--for <servings>',
        'other servings, "6,8": changed amounts are whole steps for them',
      )
        .default([], 'none')
        .argParser(servingCounts),
    )
    .addOption(
      new Option('--step <grams>', 'a changed amount is a whole number of these')
        .default(1)
        .argParser(stepGrams),
    )
    .option('--write', 'write the amounts into the recipe')
    .addHelpText('after', fitHelp)
    .action(
      async (
        recipe: string,
        targets: readonly string[],
        options: Omit<FitOptions, 'color'>,
        command: Command,
      ) => {
        const {fitCommand} = await import('./fit-command.ts')
        end(await fitCommand(recipe, targets, {...options, ...sharedOptions(command)}))
      },
    )
}

function stepGrams(text: string): number {
  const step = Number(text)
  if (/^\d+(?:\.\d+)?$/u.test(text) && step >= 0.1 && step <= 1000) return step
  throw new InvalidArgumentError('Expected grams from 0.1 to 1000.')
}

function servingCounts(text: string): readonly number[] {
  const counts = text.split(',').map((one) => one.trim())
  if (counts.every((one) => /^[1-9]\d{0,3}$/u.test(one))) return counts.map(Number)
  throw new InvalidArgumentError('Expected whole numbers from 1 up, such as 6,8.')
}
