import path from 'node:path'
import {createFiles} from './create-files.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import {print} from './output.ts'
import type {SharedOptions} from './shared-options.ts'
import {statedPlace, withStated} from './with-stated.ts'

/** Starts a cookbook: settings, foods, one recipe, and a site folder that git leaves empty. */
export async function newCookbook(
  folder: string,
  {quiet}: Pick<SharedOptions, 'quiet'>,
): Promise<ExitCode> {
  const recipe = {path: 'recipes/red-lentil-soup.md', text: soup}
  const others = [
    {path: 'cookbook.yaml', text: settings},
    {path: 'foods.yaml', text: foods},
  ]
  const {text, problems} = withStated(recipe, others)
  if (problems.length > 0)
    throw new Error(`The starting recipe does not pass: ${problems[0]?.reason}`)
  const texts = [...others, {path: recipe.path, text}]
  createFiles(
    folder,
    new Map([
      ...texts.map((source) => [`content/${source.path}`, source.text] as const),
      ['site/.gitignore', siteIgnore],
    ]),
  )
  if (quiet) return exitCodes.fine
  const change = path.resolve(folder) === path.resolve('.') ? '' : `  cd ${folder}\n`
  print(`Wrote a cookbook into ${path.join(folder, 'content')}. It passes its checks. Next:

${change}  scalepan check
  scalepan build
  scalepan new recipe "TITLE"
`)
  return exitCodes.fine
}

const settings = `title: Our cookbook
description: Recipes with figures that follow from their ingredients.
language: en
currency: EUR
scale: 1 g                    # the smallest step of the kitchen scale
rules: eu                     # whose label rules your packets follow: eu or us
tolerance: household
`

const foods = `# Foods of your own. Copy the panel of a packet as it is printed:
#
#   yoghurt from the corner shop:
#     label: { per: 100 g, energy: 61 kcal, protein: 5 g, carbohydrate: 4 g, sugars: 4 g, fat: 3 g, salt: 0.1 g }
#     sold: { weight: 500 g, price: 1.20, aisle: dairy }
#     contains: [milk]
#
# Or give a food of the table a name that you use:

brown onion: { same as: onion }
`

const soup = `---
title: Red lentil soup
summary: Half an hour, one pot, nothing to soak.
serves: 4
yield: 1300 g                 # the finished batch, weighed
time: { hands-on: 10 min, total: 30 min }
keeps: { fridge: 3 days, freezer: 3 months }
tags: [soup, one pot]
ingredients:
  red lentils: 220 g
  carrot: 150 g
  brown onion: 120 g
  olive oil: 20 g
  water: 1000 g
  salt: 6 g
${statedPlace}---

1. Soften the [onion](#brown-onion), chopped, in the [oil](#olive-oil).
2. Add the [carrot](#carrot) in slices, the [lentils](#red-lentils), rinsed, and the
   [water](#water). Simmer for 20 minutes, until the lentils fall apart.
3. Stir in the [salt](#salt) and taste.

What is left over: cool it within two hours, keep it in the fridge, and reheat it to 74 °C (165 °F).
`

const siteIgnore = `*
!.gitignore
`
