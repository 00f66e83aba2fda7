import type {Food} from '../food/food.ts'
import type {OwnFoods} from '../food/food-index.ts'
import type {LabelRules} from '../food/label-rules.ts'
import {nameKey} from '../food/name-key.ts'
import type {PublishedFoods} from '../food/published-foods.ts'
import type {CupSystem} from '../units/units.ts'
import {reportHiddenCharacters} from './hidden-characters.ts'
import {labelledFood, type OwnFoodEntry, tableFood} from './own-food.ts'
import {ownFoodReader} from './own-food-fields.ts'
import type {Located, Problem} from './problem.ts'
import {type Report, reportInto} from './problems.ts'
import type {SourceText} from './sources.ts'
import {openMapping} from './yaml/collection-readers.ts'
import {parseYaml} from './yaml/parse-yaml.ts'
import {rootReading} from './yaml/reader.ts'
import {wholeFile} from './yaml/yaml-source.ts'

/** What the meaning of foods.yaml depends on besides its text. */
export interface OwnFoodsContext {
  /** Where `same as` looks. */
  readonly published: PublishedFoods
  /** The cookbook's own rules, for labels that do not say theirs. */
  readonly rules: LabelRules
  /** What the writer's own measures were filled with. */
  readonly cups: CupSystem
}

/** Every entry of the file; for the editor's completion as well. */
export const ownFoodsReader = openMapping('a mapping from names to foods', ownFoodReader)

/**
 * Reads foods.yaml: packet labels, and other names for foods of the tables.
 * @returns the foods that could be understood, each name and other name once
 */
export function readOwnFoods(
  source: SourceText,
  context: OwnFoodsContext,
): OwnFoods & {readonly problems: readonly Problem[]} {
  const problems: Problem[] = []
  const report = reportInto(problems, source.path)
  reportHiddenCharacters(source.text, report)
  const node = parseYaml(wholeFile(source.text), report)
  const entries = node && ownFoodsReader.read(node, rootReading('The file', report))?.value
  const taken = new Map<string, string>()
  const foods: Food[] = []
  const refused: string[] = []
  for (const {key, value} of entries ?? []) {
    const {fields, isSound} = value.value
    const names = [key, ...(fields.also?.value ?? [])]
    const isFree = areFree(names, taken, report)
    const entry = {name: key, fields, file: source.path, cups: context.cups, report}
    const food = isFree && isSound ? ownFood(entry, context) : undefined
    if (food) foods.push(food)
    else refused.push(...names.map((name) => name.value))
  }
  return {foods, refused, problems}
}

function ownFood(entry: OwnFoodEntry, {published, rules}: OwnFoodsContext): Food | undefined {
  const {label} = entry.fields
  return label ? labelledFood(entry, label, rules) : tableFood(entry, published)
}

/** Takes the names for a food; a name that means two foods is reported. */
function areFree(
  names: readonly Located<string>[],
  taken: Map<string, string>,
  report: Report,
): boolean {
  const [own] = names
  let isFree = true
  for (const {value, place} of names) {
    const holder = taken.get(nameKey(value))
    if (holder === undefined) taken.set(nameKey(value), own?.value ?? value)
    else {
      isFree = false
      report({
        ruleId: 'no-duplicate-key',
        place,
        actual: value,
        reason: `Name \`${value}\` is taken by \`${holder}\`, expected one food a name`,
        note: 'Capitals and blanks do not make a name another one.',
      })
    }
  }
  return isFree
}
