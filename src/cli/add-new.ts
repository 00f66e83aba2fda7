import {Argument, type Command} from 'commander'
import {type Example, examples} from './examples-text.ts'
import type {ExitCode} from './exit-codes.ts'
import {listed} from './listed-option.ts'
import type {RecipeWords} from './new-recipe.ts'
import {sharedOptions} from './shared-options.ts'

const cookbookExamples: readonly Example[] = [
  ['scalepan new cookbook kitchen', 'makes kitchen/content and kitchen/site'],
]
const recipeExamples: readonly Example[] = [
  ['scalepan new recipe', 'asks for title, servings, ingredients, steps'],
  ['scalepan new recipe "Barley pot"', 'makes content/recipes/barley-pot.md'],
  ['scalepan new recipe "Tea" --ingredient "black tea, brewed: 200 g"', 'asks nothing'],
]

/** The commands that start a cookbook and a recipe. */
export function addNew(root: Command, end: (code: ExitCode) => void): void {
  const parent = root
    .command('new')
    .summary('start a cookbook or a recipe')
    .description('Starts a cookbook or a recipe that passes its checks. Never overwrites a file.')
    .addHelpText('after', examples([...cookbookExamples, ...recipeExamples]))
  parent
    .command('cookbook')
    .description('start a cookbook: settings, foods and a recipe')
    .addArgument(new Argument('<dir>', 'folder to make it in'))
    .addHelpText('after', examples(cookbookExamples))
    .action(async (folder: string, _: unknown, command: Command) => {
      const {newCookbook} = await import('./new-cookbook.ts')
      end(await newCookbook(folder, sharedOptions(command)))
    })
  addRecipe(parent, end)
}

function addRecipe(parent: Command, end: (code: ExitCode) => void): void {
  parent
    .command('recipe')
    .summary('start a recipe')
    .description(
      'Starts a recipe with its figures stated. On a terminal it asks for what the call does not say; without any ingredient an example stands to be written over.',
    )
    .addArgument(new Argument('[title]', 'its title, which also names its file'))
    .option('--content <dir>', 'folder of the cookbook', 'content')
    .addOption(listed('--ingredient <line>', 'such as "pearl barley: 180 g" (repeatable)'))
    .addOption(listed('--step <text>', 'a step of the method (repeatable)'))
    .option('--serves <number>', 'how many servings the batch gives')
    .option('--yield <weight>', 'the finished batch, weighed, such as "1150 g"')
    .option('--summary <text>', 'what it is, in a sentence')
    .addHelpText('after', examples(recipeExamples))
    .action(
      async (
        title: string | undefined,
        options: RecipeWords & {readonly content: string},
        command: Command,
      ) => {
        const {newRecipe} = await import('./new-recipe.ts')
        end(await newRecipe(title, {...options, ...sharedOptions(command)}))
      },
    )
}
