/** Attacks that are refused at the gate: what test/fixtures/hostile holds is let in as text. */

import {symlinkSync} from 'node:fs'
import path from 'node:path'
import {expect, test} from 'vitest'
import {build} from '../../src/build.ts'
import {readFolder} from '../../src/cookbook/read-folder.ts'
import {temporaryFolder} from '../temporary-folder.ts'

const recipe = (front: string, body = '') =>
  `---\n${front}\n---\n\n1. Boil the [oats](#oats).\n${body}`
const pot = 'title: Pot\nserves: 1\ningredients:\n  oats: 100 g'

/** Rule ids of the errors, and the paths of the site that was built all the same. */
async function answered(files: Readonly<Record<string, string>>) {
  const {problems, files: site} = build(await readFolder(temporaryFolder(files)), [])
  const errors = problems.filter(({severity}) => severity === 'error')
  return {errors: errors.map(({ruleId}) => ruleId), site: site.map((file) => file.path)}
}

test('the recipe that the attacks are made in is built', async () => {
  const {errors, site} = await answered({'recipes/pot.md': recipe(pot)})
  expect(errors).toEqual([])
  expect(site).toContain('recipes/pot/index.html')
})

test.each<[string, string, Readonly<Record<string, string>>]>([
  [
    'a title turned round',
    'no-hidden-character',
    {'recipes/a.md': recipe(pot.replace('Pot', 'P\u202Eot'))},
  ],
  [
    'an isolated amount',
    'no-hidden-character',
    {'recipes/a.md': recipe(pot.replace('100', '\u20661\u206900'))},
  ],
  [
    'a name with nothing in it',
    'no-hidden-character',
    {'recipes/a.md': recipe(pot.replace('oats', 'oa\u200Bts'))},
  ],
  [
    'a step turned round',
    'no-hidden-character',
    {'recipes/a.md': recipe(pot, '2. 74 \u202D°C\u202C.\n')},
  ],
  ['a slug in letters that look Latin', 'slug-name', {'recipes/b\u0430rley.md': recipe(pot)}],
  ['a slug in wide letters', 'slug-name', {'recipes/\uFF42arley.md': recipe(pot)}],
  ['a slug with a letter made of two', 'slug-name', {'recipes/cre\u0301me.md': recipe(pot)}],
  [
    'a food in letters that look Latin',
    'unknown-food',
    {'recipes/a.md': recipe(pot.replace('oats', '\u043Eats'))},
  ],
  [
    'a component in letters that look Latin',
    'unknown-component',
    {
      'recipes/stock.md': recipe(pot),
      'recipes/a.md': recipe(
        'title: A\nserves: 1\ningredients:\n  oats: { amount: 1 g, recipe: st\u043Eck }',
      ),
    },
  ],
  ['HTML in a text', 'no-raw-html', {'recipes/a.md': recipe(pot, '\n<script>alert(1)</script>\n')}],
  [
    'a script in a link',
    'no-unsafe-link',
    {'recipes/a.md': recipe(pot, '\n[x](javascript:alert(1))\n')},
  ],
  [
    'a picture from elsewhere',
    'image-in-folder',
    {'recipes/a.md': recipe(pot, '\n![x](https://thief.example/x.png)\n')},
  ],
  [
    'a picture that climbs',
    'image-in-folder',
    {'recipes/a.md': recipe(pot, '\n![x](../../../etc/passwd)\n')},
  ],
  ['a YAML tag', 'no-alias', {'recipes/a.md': recipe(`${pot}\ntags: !!js/function [x]`)}],
  [
    'an SVG that runs',
    'still-picture',
    {
      'recipes/a.md': recipe(pot),
      'images/x.SVG': '<svg xmlns="http://www.w3.org/2000/svg" onload="alert(1)"/>',
    },
  ],
])('%s is refused: %s', async (_, ruleId, files) => {
  const {errors, site} = await answered(files)
  expect(errors).toContain(ruleId)
  expect(site).toEqual([])
})

test('a page, a script or a document among the pictures is not published', async () => {
  const strangers = ['x.html', 'x.svg.html', 'x.js', 'x.xml', 'x.svgz', 'x.pdf', 'x', '__proto__']
  const {errors, site} = await answered({
    'recipes/pot.md': recipe(pot),
    'images/bowl.svg': '<svg xmlns="http://www.w3.org/2000/svg"/>',
    ...Object.fromEntries(strangers.map((name) => [`images/${name}`, '<script>alert(1)</script>'])),
  })
  expect(errors).toEqual([])
  expect(site.filter((file) => file.startsWith('images/'))).toEqual(['images/bowl.svg'])
})

test('a link among the pictures that leads to a file of the machine stops the build', async () => {
  const folder = temporaryFolder({'recipes/pot.md': recipe(pot), 'images/bowl.png': ''})
  const secret = path.join(temporaryFolder({'secret.png': 'secret'}), 'secret.png')
  symlinkSync(secret, path.join(folder, 'images/photo.png'))
  const {problems, files} = build(await readFolder(folder), [])
  expect(problems.map(({ruleId}) => ruleId)).toContain('inside-folder')
  expect(files).toEqual([])
})
