import type {Settings} from '../cookbook/cookbook.ts'
import {type Basis, type Figures, isComplete} from '../food/figures.ts'
import {nutrientName} from '../food/nutrients.ts'
import type {Computed, ComputedLine} from '../nutrition/computed.ts'
import {type Publishing, publishedBy, publishedFigure} from '../nutrition/published.ts'
import {nearest} from '../units/nearest.ts'
import {type Parsed, parsed, refused} from '../units/parsed.ts'
import type {FitLine, FitProblem, FitRow} from './fit-problem.ts'
import type {Target} from './target.ts'

/** What a writer asks of a fit. */
export interface FitWishes {
  readonly targets: readonly Target[]
  /** Names of the lines that may change; none: every weighed one. */
  readonly change: readonly string[]
  /** Lines that stay as they are. */
  readonly keep: readonly string[]
  readonly between: readonly {readonly name: string; readonly low: number; readonly high: number}[]
  /** Pairs of lines whose proportion stays: water and flour. */
  readonly keepRatio: readonly {readonly over: string; readonly under: string}[]
  /** Grams. */
  readonly step: number
}

/** A fit of a recipe, with the lines behind its numbers. */
export interface RecipeProblem {
  readonly problem: FitProblem
  /** In the problem's order. */
  readonly lines: readonly ComputedLine[]
}

/** Without `--between`, a line may become half as much or twice. */
const usualBounds = {low: 0.5, high: 2} as const

/** A recipe and wishes as numbers; the figures of a line grow with its amount. */
export function recipeProblem(
  computed: Computed,
  wishes: FitWishes,
  settings: Settings,
): Parsed<RecipeProblem> {
  const names = [
    ...wishes.change,
    ...wishes.keep,
    ...wishes.between.map(({name}) => name),
    ...wishes.keepRatio.flatMap(({over, under}) => [over, under]),
  ]
  for (const name of names) {
    const reason = unusable(name, computed)
    if (reason !== undefined) return refused(reason)
  }
  const lines = computed.lines.filter((line) => isChosen(line, wishes))
  if (lines.length === 0) return refused('a line whose amount is a plain weight such as `150 g`')
  const publishing = publishedBy(settings, computed.recipe)
  for (const target of wishes.targets) {
    const reason = unknownFigure(target, computed, publishing)
    if (reason !== undefined) return refused(reason)
  }
  const fitLines = lines.map((line) => fitLine(line, wishes))
  const rows = wishes.targets.map((target) => targetRow(target, lines, {computed, publishing}))
  const kept = wishes.keepRatio.flatMap((pair) => keptRows(pair, lines, computed, wishes.step))
  return parsed({problem: {lines: fitLines, rows, kept}, lines})
}

/** Why a name is of no use; undefined where it is that of a weighed line. */
function unusable(name: string, {lines}: Computed): string | undefined {
  const line = lines.find((one) => one.line.name.value === name)
  if (line === undefined) {
    const meant = nearest(
      name,
      lines.map((one) => one.line.name.value),
    )
    const hint = meant === undefined ? 'the name of an ingredient' : `\`${meant}\``
    return `${hint}, not \`${name}\``
  }
  return isFree(line) ? undefined : `a line with a plain weight, which \`${name}\` has not`
}

/** Whether a line's figures grow with a weight that can be written anew. */
function isFree({line, role}: ComputedLine): boolean {
  const {value: amount} = line.amount
  const isPlain = amount.kind === 'weight' && /^\d+(?:\.\d+)?\s?g$/u.test(amount.text)
  const hasWeighedPart = line.eaten ?? line.trimmed ?? line.pouredOff
  return role === 'counted' && isPlain && amount.grams.value > 0 && hasWeighedPart === undefined
}

function isChosen(line: ComputedLine, {change, keep}: FitWishes): boolean {
  const name = line.line.name.value
  return isFree(line) && !keep.includes(name) && (change.length === 0 || change.includes(name))
}

/** Grams as the line has them. */
function written({line}: ComputedLine): number {
  const {value: amount} = line.amount
  return amount.kind === 'weight' ? amount.grams.value : 0
}

function fitLine(line: ComputedLine, {between, step}: FitWishes): FitLine {
  const name = line.line.name.value
  const grams = written(line)
  const bounds = between.find((one) => one.name === name)
  const {low = grams * usualBounds.low, high = grams * usualBounds.high} = bounds ?? {}
  return {name, grams, low: Math.min(low, grams), high: Math.max(high, grams), step}
}

interface Context {
  readonly computed: Computed
  readonly publishing: Publishing
}

function targetRow(target: Target, lines: readonly ComputedLine[], context: Context): FitRow {
  const {computed, publishing} = context
  const share = computed.servedRatio.value / (computed.recipe.serves?.value ?? 1)
  const sum = (figures: Figures<Basis>) =>
    target.terms.reduce(
      (total, {nutrient, weight}) =>
        total + weight * publishedFigure(figures, nutrient, publishing).value,
      0,
    )
  const brought = lines.map((line) => sum(line.adds) * share)
  const now = sum(computed.perServing ?? computed.batch)
  return {
    text: target.text,
    perGram: lines.map((line, index) => (brought[index] ?? 0) / written(line)),
    fixed: now - brought.reduce((total, one) => total + one, 0),
    sense: target.sense,
    bound: target.bound,
    scale: Math.max(Math.abs(target.bound), Math.abs(now), 1e-3),
  }
}

/** Half a step of play: the proportion is as near as amounts in steps can have it. */
function keptRows(
  {over, under}: FitWishes['keepRatio'][number],
  lines: readonly ComputedLine[],
  {lines: all}: Computed,
  step: number,
): readonly FitRow[] {
  const gramsOf = (name: string) => all.filter(({line}) => line.name.value === name).map(written)
  const [overGrams = 0] = gramsOf(over)
  const [underGrams = 1] = gramsOf(under)
  const ratio = overGrams / underGrams
  const weightOf = (name: string) => (name === over ? 1 : name === under ? -ratio : 0)
  const perGram = lines.map(({line}) => weightOf(line.name.value))
  const changing = lines.reduce((sum, line, at) => sum + (perGram[at] ?? 0) * written(line), 0)
  const shared = {text: `${over} / ${under}`, perGram, fixed: -changing, scale: step}
  return [
    {...shared, sense: '<=', bound: step / 2},
    {...shared, sense: '>=', bound: -step / 2},
  ]
}

/** A figure that is "at least" can be shown to reach a bound, never to stay below one. */
function unknownFigure(
  {terms, sense, text}: Target,
  computed: Computed,
  publishing: Publishing,
): string | undefined {
  for (const {nutrient, weight} of terms) {
    const figure = publishedFigure(computed.batch, nutrient, publishing)
    const isAtMost = (sense === '<=') === weight > 0
    if (isAtMost && !isComplete(figure)) {
      const foods = [...figure.missing].join(', ')
      return `known figures for \`${text}\`: nobody published ${nutrientName[nutrient]} for ${foods}`
    }
  }
  return undefined
}
