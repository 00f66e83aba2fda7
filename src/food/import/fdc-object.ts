import {type Parsed, parsed, refused} from '../../units/parsed.ts'
import {type FdcFood, fdcAmount, fdcServing} from './fdc-food.ts'
import {type FdcNutrient, fdcNutrients} from './fdc-nutrients.ts'

/**
 * Lists of the JSON downloads that are read, with the `dataType` their foods have. Keys and shapes
 * from memory of the published downloads, seen on no copy of them.
 */
export const fdcLists: ReadonlyMap<string, string> = new Map([
  ['FoundationFoods', 'Foundation'],
  ['SRLegacyFoods', 'SR Legacy'],
  ['BrandedFoods', 'Branded'],
])

/** Units as nutrient.csv has them, by the way the JSON writes them in capitals. */
const units: ReadonlyMap<string, FdcNutrient['unit']> = new Map([
  ['KCAL', 'KCAL'],
  ['G', 'G'],
  ['MG', 'MG'],
  ['UG', 'UG'],
  ['MCG', 'UG'],
  // The micro sign and the Greek letter alike.
  ['\u039cG', 'UG'],
])

/**
 * One object of a JSON download as a food.
 * @param dataType that foods of its list have
 */
export function fdcFoodOf(object: unknown, dataType: string): Parsed<FdcFood> {
  const id = String(field(object, 'fdcId'))
  if (!/^\d+$/.test(id)) return refused(`a number as \`fdcId\`, not \`${id}\``)
  const type = field(object, 'dataType')
  if (type !== dataType) return refused(`\`${dataType}\` as \`dataType\`, not \`${String(type)}\``)
  const description = textOf(field(object, 'description'))
  if (description === '') return refused('a `description`')
  const amounts = amountsOf(field(object, 'foodNutrients'))
  if (!amounts.ok) return amounts
  const food = {id, name: description, amounts: amounts.value}
  if (dataType !== 'Branded') return parsed(food)
  const serving = fdcServing(
    numberText(field(object, 'servingSize')),
    textOf(field(object, 'servingSizeUnit')),
  )
  if (!serving.ok) return serving
  const brand = textOf(field(object, 'brandName')) || textOf(field(object, 'brandOwner'))
  return parsed({
    ...food,
    name: brandedName({description, brand, serving: serving.value}),
    ...(serving.value && {serving: serving.value}),
  })
}

/** What tells a packet from others of its kind; figures per 100 ml are told with the name. */
export function brandedName({
  description,
  brand,
  serving,
}: {
  readonly description: string
  readonly brand: string
  readonly serving: FdcFood['serving']
}): string {
  const whole = brand === '' ? description : `${description}, ${brand}`
  return serving?.column === 'serving_ml' ? `${whole} (per 100 ml)` : whole
}

function amountsOf(list: unknown): Parsed<ReadonlyMap<string, string>> {
  const amounts = new Map<string, string>()
  if (!Array.isArray(list)) return refused('a list as `foodNutrients`')
  for (const each of list) {
    const nutrient = field(each, 'nutrient')
    const id = String(field(nutrient, 'id'))
    const known = fdcNutrients.get(id)
    const amount = field(each, 'amount')
    if (!known || amount === undefined || amount === null) continue
    const [name, unit] = [textOf(field(nutrient, 'name')), textOf(field(nutrient, 'unitName'))]
    if (units.get(unit.toUpperCase()) !== known.unit) {
      return refused(`\`${name}\` in \`${known.unit}\`, not in \`${unit}\``)
    }
    const cell = fdcAmount(id, numberText(amount))
    if (!cell.ok) return refused(`${cell.expected}, for \`${name}\``)
    amounts.set(id, cell.value)
  }
  return parsed(amounts)
}

function field(object: unknown, key: string): unknown {
  return typeof object === 'object' && object !== null && Object.hasOwn(object, key)
    ? Reflect.get(object, key)
    : undefined
}

function textOf(value: unknown): string {
  return typeof value === 'string' ? value.replace(/\s+/g, ' ').trim() : ''
}

/** JSON keeps no zeros at the end of a number, so its last digit may be coarser than printed. */
function numberText(value: unknown): string {
  if (typeof value !== 'number') return typeof value === 'string' ? value.trim() : ''
  const text = String(value)
  return /e-/.test(text) ? value.toFixed(9).replace(/\.?0+$/, '') : text
}
