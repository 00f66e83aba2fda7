import {Argument, type Command, InvalidArgumentError, Option} from 'commander'
import {parseDay} from '../cookbook/calendar-date.ts'
import {type Aisle, aisles} from '../food/food.ts'
import {addFoodLookUps} from './add-food-look-ups.ts'
import type {ExitCode} from './exit-codes.ts'
import {sharedOptions} from './shared-options.ts'

const help = `
Examples:
  scalepan foods find zuchini                          names like it, figures and id
  scalepan foods show "pearl barley"                   all that is known of it
  scalepan foods like tomato-relish --aisle condiments what could be bought in its place
  scalepan foods like feta --in lentil-bowl            by the amount the recipe uses of it
  scalepan foods label                                 copies a packet, question by question
  scalepan foods audit                                 labels and rows to read again
`

/** The commands about foods: the built-in table, the cookbook's own, and tables it brings. */
export function addFoods(root: Command, end: (code: ExitCode) => void): void {
  const foods = root
    .command('foods')
    .summary('find, show, compare and check foods')
    .description('Finds, shows, compares and checks the foods a cookbook can name.')
    .addHelpText('after', help)
  addFoodLookUps(foods, end)
  addImport(foods, end)
  addLabel(foods, end)
  addAudit(foods, end)
}

const contentOption = ['--content <dir>', 'folder of the cookbook', 'content'] as const

const importHelp = `
A mapping names the published headings for the columns of a brought table; figures are per 100 g:
  cells parted by: semicolon        # comma (the default), semicolon or tab
  decimals: comma                   # point (the default) or comma
  unknown: [N, "-"]                 # beside the empty cell
  trace: [Tr]
  columns:
    id: Code
    name: Food
    protein_g: Protein
    energy_kcal: { from: Energy, unit: kJ, zero is unknown: true }
    fibre_g: Fibre
    carbohydrate_g: { from: Carbohydrate, add: [Fibre] }

carbohydrate_g is total carbohydrate, its fibre within. Most European tables give carbohydrate
without fibre: add their fibre as above, or it is taken off a second time.

Examples:
  scalepan foods import national.csv --as national --map national.mapping
  scalepan foods import national.csv --as national    by the mapping saved beside the table
  scalepan foods import FoodData_Central_csv --as fdc  a folder of food.csv, nutrient.csv and
                                                       food_nutrient.csv (Foundation, SR Legacy);
                                                       branded with branded_food.csv beside them
  scalepan foods import branded.json --as branded      a JSON download of FoodData Central

Branded foods are too many to read at once: they come into content/tables/NAME.foods, of which a
build reads the rows that recipes name, and foods find, show and like the rest.
`

function addImport(foods: Command, end: (code: ExitCode) => void): void {
  foods
    .command('import')
    .summary('bring a published table into the cookbook')
    .description(
      'Turns a published composition table (delimited text, UTF-8) into content/tables/NAME.tsv by a mapping of its columns, which is saved beside it as NAME.mapping. A row that cannot be understood stops it, and the table that was there stays.',
    )
    .addArgument(
      new Argument('<file>', 'the download: a text, or FoodData Central’s folder or .json'),
    )
    .requiredOption('--as <name>', 'first part of the foods’ ids')
    .option('--map <file>', 'the mapping of its columns')
    .option(...contentOption)
    .addHelpText('after', importHelp)
    .action(
      async (
        file: string,
        options: {content: string; as: string; map?: string},
        command: Command,
      ) => {
        const {foodsImportCommand} = await import('./foods-import-command.ts')
        end(await foodsImportCommand(file, {...options, ...sharedOptions(command)}))
      },
    )
}

const labelHelp = `
Examples:
  scalepan foods label                                 asks line by line
  scalepan foods label "plain curd" "per: 100 g" "energy: 62 kcal" "protein: 11 g" \\
    "fat: 0.2 g" "carbohydrate: 4 g" --contains milk --weight "450 g" --price 2.39 --aisle dairy
`

interface WrittenBeside {
  readonly content: string
  readonly anyway?: boolean
  readonly contains?: string
  readonly mayContain?: string
  readonly madeFrom?: string
  readonly weight?: string
  readonly price?: string
  readonly aisle?: Aisle
}

function addLabel(foods: Command, end: (code: ExitCode) => void): void {
  foods
    .command('label')
    .summary('copy a packet into foods.yaml')
    .description(
      'Puts the panel of a packet behind the foods of foods.yaml, once it passes the checks of labels. Lines are written as in foods.yaml; without any, they are asked for.',
    )
    .addArgument(new Argument('[name]', 'as recipes will call it'))
    .addArgument(new Argument('[lines...]', 'lines of the panel, such as "fat: 0.2 g"'))
    .option(...contentOption)
    .option('--contains <allergens>', 'allergens in it, such as "milk, egg", or none')
    .option('--may-contain <allergens>', 'allergens the packet warns of as traces')
    .option('--made-from <origins>', 'what it is made from, such as dairy')
    .option('--weight <weight>', 'what is in one pack, such as "450 g"')
    .option('--price <number>', 'price of one pack')
    .addOption(new Option('--aisle <aisle>', 'where in the shop it stands').choices(aisles))
    .option('--anyway', 'write it though its figures look odd: the packet says so')
    .addHelpText('after', labelHelp)
    .action(
      async (
        name: string | undefined,
        lines: readonly string[],
        options: WrittenBeside,
        command: Command,
      ) => {
        const {foodsLabelCommand} = await import('./foods-label-command.ts')
        const {content, anyway = false} = options
        const written = {content, anyway, beside: beside(options)}
        end(await foodsLabelCommand(name, lines, {...written, ...sharedOptions(command)}))
      },
    )
}

function beside({contains, mayContain, madeFrom, weight, price, aisle}: WrittenBeside) {
  const sold = Object.entries({weight, price, aisle}).flatMap(([key, value]) =>
    value === undefined ? [] : [[key, value] as const],
  )
  return {
    ...(contains !== undefined && {contains: listed(contains)}),
    ...(mayContain !== undefined && {mayContain: listed(mayContain)}),
    ...(madeFrom !== undefined && {madeFrom: listed(madeFrom)}),
    sold: new Map(sold),
  }
}

/** The words of `milk, egg`; `none` is an empty list, which says that there are none. */
function listed(text: string): readonly string[] {
  return text
    .split(',')
    .map((word) => word.trim())
    .filter((word) => word !== '' && word !== 'none')
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
      end(await foodsAuditCommand({...options, ...sharedOptions(command)}))
    })
}

function day(text: string): string {
  const written = parseDay(text)
  if (written.ok) return written.value
  throw new InvalidArgumentError(`Expected ${written.expected}.`)
}
