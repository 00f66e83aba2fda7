import type {Settings} from '../cookbook/cookbook.ts'
import type {Computed, ComputedLine} from '../nutrition/computed.ts'
import {publishedBy} from '../nutrition/published.ts'
import {nearest} from '../units/nearest.ts'
import {type Parsed, parsed, refused} from '../units/parsed.ts'
import type {FitKept, FitProblem, LinearSum} from './fit-problem.ts'
import {type FreeLine, freeLine, whyFixed, writtenGrams} from './free-line.ts'
import {lineSums} from './line-sums.ts'
import {stepsAtOnce} from './steps-at-once.ts'
import type {Target} from './target.ts'
import {targetRow, whyUntold} from './target-row.ts'

/** What a writer asks of a fit. */
export interface FitWishes {
  readonly targets: readonly Target[]
  /** Names of the lines that may change; none: every one that can. */
  readonly change: readonly string[]
  /** Lines that stay as they are. */
  readonly keep: readonly string[]
  readonly between: readonly {readonly name: string; readonly low: number; readonly high: number}[]
  /** Pairs of lines whose proportion stays: water and flour. */
  readonly keepRatio: readonly {readonly over: string; readonly under: string}[]
  /** Whether what is mixed keeps its weight, and with it the finished batch. */
  readonly keepsYield: boolean
  /** Other numbers of servings for which changed amounts are whole steps too. */
  readonly servings: readonly number[]
  /** Grams. */
  readonly step: number
}

/** A fit of a recipe, with the lines behind its numbers. */
export interface RecipeProblem {
  readonly problem: FitProblem
  /** In the problem's order. */
  readonly lines: readonly FreeLine[]
  /** Lines that could have changed, had they been written otherwise. */
  readonly fixed: readonly {readonly name: string; readonly because: string}[]
  readonly mixedGrams: LinearSum
}

/** Without `between`, a line may become half as much or twice. */
const usualBounds = {low: 0.5, high: 2} as const

/** A recipe and wishes as numbers; the figures of a line grow with its amount. */
export function recipeProblem(
  computed: Computed,
  wishes: FitWishes,
  settings: Settings,
): Parsed<RecipeProblem> {
  const fault = unusableName(wishes, computed) ?? unusableServings(wishes, computed)
  if (fault !== undefined) return refused(fault)
  const chosen = computed.lines.filter((line) => isChosen(line, wishes))
  const read = chosen.map((line) => ({line, free: freedom(line, wishes, computed)}))
  const lines = read.flatMap(({free}) => (typeof free === 'string' ? [] : [free]))
  const fixed = read.flatMap(({line, free}) =>
    typeof free === 'string' ? [{name: line.line.name.value, because: free}] : [],
  )
  if (lines.length === 0) return refused('a line whose amount is a weight such as `150 g`')
  const publishing = publishedBy(settings, computed.recipe)
  for (const target of wishes.targets) {
    const reason = whyUntold(target, computed, publishing)
    if (reason !== undefined) return refused(reason)
  }
  const sums = lineSums(
    computed,
    lines.map(({line}) => line),
    publishing,
  )
  const grams = lines.map(({fitLine}) => fitLine.grams)
  const serves = computed.recipe.serves?.value
  const problem = {
    lines: lines.map(({fitLine}) => fitLine),
    rows: wishes.targets.map((target) => targetRow(target, sums, {serves, grams})),
    kept: [
      ...wishes.keepRatio.map((pair) => keptRatio(pair, lines, computed, wishes)),
      ...(wishes.keepsYield ? [keptYield(sums.mixedGrams, computed, wishes)] : []),
    ],
  }
  return parsed({problem, lines, fixed, mixedGrams: sums.mixedGrams})
}

function freedom(line: ComputedLine, wishes: FitWishes, computed: Computed): FreeLine | string {
  const because = whyFixed(line)
  if (because !== undefined) return because
  const grams = writtenGrams(line)
  const bounds = wishes.between.find((one) => one.name === line.line.name.value)
  const {low = grams * usualBounds.low, high = grams * usualBounds.high} = bounds ?? {}
  return freeLine(line, {low, high, step: wishes.step, stepsAtOnce: atOnce(wishes, computed)})
}

function atOnce({servings}: FitWishes, {recipe}: Computed): number {
  return stepsAtOnce(recipe.serves?.value ?? 1, servings)
}

/** Optional lines and those a writer took out of the figures are no part of a fit. */
function isChosen({line, role}: ComputedLine, {change, keep}: FitWishes): boolean {
  const name = line.name.value
  return (
    role === 'counted' && !keep.includes(name) && (change.length === 0 || change.includes(name))
  )
}

/** Why a wish cannot be taken; undefined where every name is that of a line that may change. */
function unusableName(
  {change, keep, between, keepRatio}: FitWishes,
  {lines}: Computed,
): string | undefined {
  const moved = [...change, ...between.map(({name}) => name)]
  const kept = [...keep, ...keepRatio.flatMap(({over, under}) => [over, under])]
  for (const name of [...moved, ...kept]) {
    const line = lines.find((one) => one.line.name.value === name)
    if (line === undefined) return meantName(name, lines)
    const because = whyFixed(line)
    const mustWeigh = !keep.includes(name)
    if (mustWeigh && because !== undefined) {
      return `a line that can change, which \`${name}\` cannot: ${because}`
    }
  }
  return undefined
}

function meantName(name: string, lines: Computed['lines']): string {
  const names = lines.map((one) => one.line.name.value)
  const meant = nearest(name, names)
  return meant === undefined
    ? `one of the ingredients, ${names.join('; ')}, not \`${name}\``
    : `\`${meant}\`, not \`${name}\``
}

function unusableServings({servings}: FitWishes, {recipe}: Computed): string | undefined {
  return servings.length > 0 && recipe.serves === undefined
    ? '`serves` in the recipe, to cook it for other numbers'
    : undefined
}

/** Half a step of play: the proportion is as near as amounts in steps can have it. */
function keptRatio(
  {over, under}: FitWishes['keepRatio'][number],
  lines: readonly FreeLine[],
  computed: Computed,
  wishes: FitWishes,
): FitKept {
  const gramsOf = (name: string) =>
    computed.lines.filter(({line}) => line.name.value === name).map(writtenGrams)
  const [overGrams = 0] = gramsOf(over)
  const [underGrams = 1] = gramsOf(under)
  const ratio = overGrams / underGrams
  const perGram = lines.map(({fitLine: {name}}) =>
    name === over ? 1 : name === under ? -ratio : 0,
  )
  // Either may be a line that stays: then it stands in what is fixed.
  const changing = lines.reduce((sum, {fitLine}, at) => sum + (perGram[at] ?? 0) * fitLine.grams, 0)
  const play = (wishes.step * atOnce(wishes, computed)) / 2
  return keptWithin(`${over} / ${under}`, {perGram, fixed: -changing}, play)
}

function keptYield(mixed: LinearSum, computed: Computed, wishes: FitWishes): FitKept {
  const play = (wishes.step * atOnce(wishes, computed)) / 2
  const change = {perGram: mixed.perGram, fixed: mixed.fixed - computed.mixedGrams.value}
  return keptWithin('the weight of what is mixed', change, play)
}

/** A sum that stays at 0, but for some play; grams. */
function keptWithin(text: string, over: LinearSum, play: number): FitKept {
  const shared = {text, over, scale: play * 2}
  return {
    text,
    rows: [
      {...shared, sense: '<=', bound: play},
      {...shared, sense: '>=', bound: -play},
    ],
  }
}
