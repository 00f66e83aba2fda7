import {readdirSync, readFileSync} from 'node:fs'
import path from 'node:path'
import {expect, test} from 'vitest'
import {keepBefore} from '../../src/cli/keep-before.ts'
import {putFiles, temporaryFolder} from '../temporary-folder.ts'

test('files are kept at their own paths, those of the last twenty times', async () => {
  const folder = temporaryFolder()
  for (let time = 1; time <= 21; time++) {
    putFiles(folder, {'recipes/pot.md': `pot ${time}`, 'foods.yaml': `foods ${time}`})
    const kept = await keepBefore(folder, ['recipes/pot.md', 'foods.yaml'])
    expect(kept).toBe(path.join(folder, '.scalepan/before', String(time)))
  }
  const all = path.join(folder, '.scalepan/before')
  const numbers = readdirSync(all).map(Number)
  expect(numbers.toSorted((left, right) => left - right)).toEqual(
    Array.from({length: 20}, (_, index) => index + 2),
  )
  expect(readFileSync(path.join(all, '2/recipes/pot.md'), 'utf8')).toBe('pot 2')
  expect(readFileSync(path.join(all, '21/foods.yaml'), 'utf8')).toBe('foods 21')
  // Nothing of it goes into the cookbook's own history.
  expect(readFileSync(path.join(folder, '.scalepan/.gitignore'), 'utf8')).toBe('*\n')
})

test('two commands at once keep each its own', async () => {
  const folder = temporaryFolder({'foods.yaml': 'foods'})
  const kept = await Promise.all([1, 2, 3].map(() => keepBefore(folder, ['foods.yaml'])))
  expect(new Set(kept).size).toBe(3)
})
