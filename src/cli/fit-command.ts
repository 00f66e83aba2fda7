import {mendedText} from '../check/mended-text.ts'
import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import type {SourceText} from '../cookbook/sources.ts'
import {fitted} from '../fit/fit.ts'
import {asWritten, shortfall, sumValue} from '../fit/fit-problem.ts'
import {fitText} from '../fit/fit-text.ts'
import {weight} from '../fit/free-line.ts'
import {type FitWishes, type RecipeProblem, recipeProblem} from '../fit/recipe-problem.ts'
import {loadSolver} from '../fit/solver.ts'
import {parseTarget, type Target} from '../fit/target.ts'
import type {Computed} from '../nutrition/computed.ts'
import type {Parsed} from '../units/parsed.ts'
import {type ExaminedFolder, examinedAgain, examinedFolder} from './examined-folder.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import {mendFiles} from './mend-files.ts'
import {print, remark, tell} from './output.ts'
import {Progress} from './progress.ts'
import {computedOf, recipeFile, tellUncomputed} from './recipe-file.ts'
import type {SharedOptions} from './shared-options.ts'

export interface FitOptions extends SharedOptions {
  readonly content: string
  readonly change: readonly string[]
  readonly keep: readonly string[]
  /** `carrot=100..300`. */
  readonly between: readonly string[]
  /** `water / bread flour`. */
  readonly keepRatio: readonly string[]
  readonly keepYield?: true
  /** Other numbers of servings. */
  readonly for: readonly number[]
  /** Grams. */
  readonly step: number
  readonly write?: true
}

/** Finds the smallest change of a recipe's amounts that meets targets; writes it where asked. */
export async function fitCommand(
  name: string,
  texts: readonly string[],
  options: FitOptions,
): Promise<ExitCode> {
  const wishes = wishesOf(texts, options)
  const progress = new Progress(options)
  const folder = await examinedFolder(options.content, options)
  const file = recipeFile(name, folder)
  const computed = computedOf(file, folder)
  if (computed === undefined) return tellUncomputed(file, folder, options)
  const {settings} = folder.examined.cookbook
  const recipe = taken(recipeProblem(computed, wishes, settings), 'this fit')
  const solve = await loadSolver()
  progress.begin('finding the smallest change')
  const fit = fitted(recipe.problem, solve)
  progress.end()
  if (fit === undefined) {
    const kept = recipe.problem.kept.map(({text}) => text).join(', ')
    tell(`No amounts in whole steps within the bounds keep this: ${kept}. Nothing was written.\n`)
    return exitCodes.errorsFound
  }
  const {title, serves} = computed.recipe
  print(`${title.value}, ${serves ? 'a serving' : 'the whole batch'}\n`)
  const servings = [serves?.value ?? 1, ...wishes.servings]
  print(fitText({fit, recipe, targets: wishes.targets, servings}))
  if (fit.rows.some((row) => row.shortfall > 0)) {
    tell('\nNot every target can be met within the bounds: nothing was written.\n')
    return exitCodes.errorsFound
  }
  tellYield(recipe, fit.grams, {computed, options})
  return checked(recipe, fit.grams, {folder, file, wishes, options})
}

/** A weighed batch is that of the old amounts, and recipes that use it by weight go by it. */
function tellYield(
  {problem, mixedGrams}: RecipeProblem,
  grams: readonly number[],
  {computed: {recipe}, options}: {readonly computed: Computed; readonly options: FitOptions},
): void {
  const {batch} = recipe
  const [before, after] = [asWritten(problem), grams].map((each) => sumValue(mixedGrams, each))
  if (batch === undefined || before === undefined || after === undefined) return
  if (Math.abs(after - before) <= batch.value.grams.increment / 2) return
  remark(
    `\nWhat is mixed weighs ${weight(Math.round(after))}, and ${weight(Math.round(before))} before: weigh the finished batch anew\nand write it after \`yield\`, or keep it with --keep-yield.\n`,
    options,
  )
}

interface Context {
  readonly folder: ExaminedFolder
  readonly file: string
  readonly wishes: FitWishes
  readonly options: FitOptions
}

/** Computes the recipe anew with its new amounts, as a build will, before anything is written. */
async function checked(
  {lines}: RecipeProblem,
  grams: readonly number[],
  {folder, file, wishes, options}: Context,
): Promise<ExitCode> {
  const source = folder.read.sources.texts.find(({path}) => folder.filePath(path) === file)
  if (source === undefined) throw new Error(`No text of ${file}`)
  const fixes = lines.flatMap(({line: {line}, fitLine, textOf}, index) => {
    const to = grams[index]
    return to === undefined || to === fitLine.grams
      ? []
      : [{place: line.amount.place, text: textOf(to, 1)}]
  })
  const text = mendedText(source.text, fixes)
  const after = withText(folder, source, text)
  const missed = missedAnew(computedOf(file, after), wishes, after)
  if (missed.length > 0) {
    tell(`\nComputed anew, this does not hold: ${missed.join(', ')}. Nothing was written.\n`)
    return exitCodes.errorsFound
  }
  if (options.write !== true || fixes.length === 0) return exitCodes.fine
  await mendFiles(options.content, [{source, text}], options)
  remark(`\n${file} written.\n`, options)
  const errors = after.messages.filter((one) => one.file === file && one.severity === 'error')
  if (errors.length > 0) {
    remark(
      'What it states no longer follows: `scalepan check --fix` writes the computed figures.\n',
      options,
    )
  }
  return exitCodes.fine
}

/** The targets that amounts, once they are written, do not meet. */
function missedAnew(
  computed: Computed | undefined,
  wishes: FitWishes,
  {examined}: ExaminedFolder,
): readonly string[] {
  const all = wishes.targets.map(({text}) => text)
  if (computed === undefined) return all
  const same = {...wishes, between: [], servings: []}
  const again = recipeProblem(computed, same, examined.cookbook.settings)
  if (!again.ok) return all
  const {problem} = again.value
  const grams = asWritten(problem)
  return problem.rows.filter((row) => shortfall(row, grams) > 0).map(({text}) => text)
}

function wishesOf(texts: readonly string[], options: FitOptions): FitWishes {
  const {change, keep, step} = options
  const targets = texts.map((text): Target => taken(parseTarget(text), `\`${text}\``))
  return {
    targets,
    change,
    keep,
    step,
    between: options.between.map(boundsOf),
    keepRatio: options.keepRatio.map(ratioOf),
    keepsYield: options.keepYield === true,
    servings: options.for,
  }
}

function boundsOf(text: string): FitWishes['between'][number] {
  const [, name = '', low, high] = /^(.+)=(\d+(?:\.\d+)?)\.\.(\d+(?:\.\d+)?)$/u.exec(text) ?? []
  if (low !== undefined && Number(low) <= Number(high)) {
    return {name, low: Number(low), high: Number(high)}
  }
  throw new EnvironmentFailure(`Bounds \`${text}\`, expected such as \`carrot=100..300\`, in grams`)
}

function ratioOf(text: string): FitWishes['keepRatio'][number] {
  const [over = '', under = '', more] = text.split(/\s+\/\s+/u)
  if (over !== '' && under !== '' && more === undefined) return {over, under}
  throw new EnvironmentFailure(`Proportion \`${text}\`, expected such as \`water / bread flour\``)
}

/** What was asked, where it can be; else the call is at fault. */
function taken<T>(read: Parsed<T>, subject: string): T {
  if (read.ok) return read.value
  throw new EnvironmentFailure(`Cannot take ${subject}, expected ${read.expected}`)
}

function withText(folder: ExaminedFolder, source: SourceText, text: string): ExaminedFolder {
  const {sources, problems} = folder.read
  const texts = sources.texts.map((one) => (one === source ? {...one, text} : one))
  return examinedAgain(folder, {sources: {...sources, texts}, problems})
}
