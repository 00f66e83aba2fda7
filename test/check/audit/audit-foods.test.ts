import {expect, test} from 'vitest'
import {examine} from '../../../src/build.ts'
import {auditFoods} from '../../../src/check/audit/audit-foods.ts'
import {outlierOddities, sameNameOddities} from '../../../src/check/audit/outlier.ts'
import {rowOddities} from '../../../src/check/audit/row-sanity.ts'
import {coreTable} from '../../../src/food/core-table.ts'
import {food} from '../../kitchen.ts'

const core = coreTable('us').foods()

function odd(figures: Parameters<typeof food>[1]): string {
  return rowOddities(food('tested', figures))
    .map(({reason}) => reason)
    .join('\n')
}

test('a sound row is not odd', () => {
  // USDA SR28 (2015), 20005 pearl barley.
  const barley = {energy: 352, protein: 9.91, fat: 1.16, carbohydrate: 77.72, fibre: 15.6}
  expect(odd({...barley, water: 10.09, saturated: 0.24, sugars: 0.8})).toBe('')
})

test('a part is not more than its whole, but for the slack of two analyses', () => {
  expect(odd({fat: 5, saturated: 6})).toBe('')
  expect(odd({fat: 5, saturated: 6.1})).toContain('part of the fat')
  expect(odd({carbohydrate: 10, fibre: 20})).toContain('part of the carbohydrate')
  // Carbohydrate without fibre, where a table gives no other: fibre stands beside it.
  expect(odd({availableCarbohydrate: 10, fibre: 20})).toBe('')
  expect(odd({availableCarbohydrate: 10, sugars: 12})).toContain(
    '`12 g` of `tested`, expected `10 g` or less',
  )
})

test('parts are not more than 100 g, but for the slack of proximates', () => {
  expect(odd({water: 60, protein: 20, fat: 20, carbohydrate: 3})).toBe('')
  expect(odd({water: 60, protein: 20, fat: 20, carbohydrate: 3.2})).toContain('103.2 g')
})

test('energy follows from the macros by some method, within a quarter', () => {
  const macros = {protein: 20, fat: 10, carbohydrate: 0}
  // 20 × 4 + 10 × 9 = 170 kcal; 170 + 25 % of 226 = 226.5.
  expect(odd({...macros, energy: 226})).toBe('')
  expect(odd({...macros, energy: 228})).toContain('expected about `170 kcal`')
  // What is unknown may be anything.
  expect(odd({protein: 20, fat: 10, energy: 400})).toBe('')
})

test('few rows of the built-in table are odd, each for a reason', () => {
  const rows = core.filter(({provenance}) => provenance.kind === 'table')
  const found = rows.filter(
    (row) => rowOddities(row).length + outlierOddities(row, core).length > 0,
  )
  // USDA SR28 (2015): 19918 stevia powder has 100 g of carbohydrate and no energy; 44055 dried celery
  // flakes give more than the dried spices with their macros.
  expect(found.map(({id}) => id)).toEqual(['usda/44055', 'usda/19918'])
})

test('an energy unlike that of the nearest foods is odd, whatever one of them says', () => {
  const neighbour = (name: string, energy: number) =>
    food(name, {protein: 20, fat: 10, carbohydrate: 1, fibre: 0, energy})
  const table = [neighbour('a', 174), neighbour('b', 170), neighbour('c', 176)]
  expect(outlierOddities(neighbour('own', 348), table)).toHaveLength(1)
  expect(outlierOddities(neighbour('own', 180), table)).toEqual([])
  const confirmed = [...table.slice(0, 2), neighbour('d', 345)]
  expect(outlierOddities(neighbour('own', 348), confirmed)).toEqual([])
})

test('a label that copies a serving as 100 g is unlike the table food of its name', () => {
  // 40 g of oats: all its figures fit each other.
  const serving = food('Rolled oats', {energy: 152, protein: 5.3, fat: 2.6, carbohydrate: 27})
  expect(sameNameOddities(serving, core)[0]?.reason).toContain('has the same name')
  const right = food('Rolled oats', {energy: 379, protein: 13.2, fat: 6.5, carbohydrate: 67.7})
  expect(sameNameOddities(right, core)).toEqual([])
})

function audit(day: string) {
  const texts = [
    {path: 'cookbook.yaml', text: 'title: Test\nrules: us\n'},
    {
      path: 'foods.yaml',
      text: `curd:
  label: { per: 100 g, energy: 98 kcal, protein: 11 g, fat: 0 g, carbohydrate: 4 g, read: 2025-11-25 }
`,
    },
    {
      path: 'recipes/dish.md',
      text: '---\ntitle: Dish\nserves: 1\ningredients:\n  curd: 100 g\n  river/R2: 50 g\n---\n\nStir.\n',
    },
    {
      path: 'tables/river.tsv',
      text: 'id\tname\tenergy_kcal\tprotein_g\tfat_g\tcarbohydrate_g\nR1\tUnused\t900\t1\t1\t1\nR2\tReed hen\t340\t20\t10\t0\n',
    },
  ]
  const read = {sources: {texts, images: []}, problems: []}
  const {cookbook, computed} = examine(read)
  return auditFoods({cookbook, all: computed, texts, today: day})
}

test('an audit sees labels, and the rows in use where they stand', () => {
  const {labels, rows, findings} = audit('2026-11-25')
  expect({labels, rows}).toEqual({labels: 1, rows: 1})
  const seen = findings.map(({file, place, reason}) => `${file}:${place?.start.line} ${reason}`)
  expect(seen).toHaveLength(4)
  expect(seen[0]).toMatch(/^foods.yaml:2 Energy `98 kcal` of `curd`/)
  expect(seen[1]).toMatch(/^foods.yaml:1 .*nearly the same macros/)
  expect(seen[2]).toMatch(/^tables\/river.tsv:3 .*from its macros/)
  expect(seen[3]).toMatch(/^tables\/river.tsv:3 .*nearly the same macros/)
})

test('a label is to be read again after a year', () => {
  const old = (day: string) =>
    audit(day).findings.some(({reason}) => reason.includes('was read on'))
  expect(old('2026-11-25')).toBe(false)
  expect(old('2026-11-26')).toBe(true)
})
