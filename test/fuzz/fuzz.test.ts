/**
 * Texts with slips in them, so many of each kind and always the same; `npm run fuzz` goes on with
 * others for as long as it is told.
 */

import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {build} from '../../src/build.ts'
import {cookbookTexts, found} from './corpus.ts'
import {slipped} from './slips.ts'
import {targets} from './targets.ts'

const seed = 20_261_125
const runs = 40

test('the cookbook the slips are made in has no errors', () => {
  const {problems, files} = build({sources: {texts: cookbookTexts(), images: []}, problems: []}, [])
  expect(problems.filter(({severity}) => severity === 'error')).toEqual([])
  expect(files.length).toBeGreaterThan(10)
})

describe.each(targets)('$name', ({name, texts, holds}) => {
  test('holds for what once broke it', () => {
    for (const text of [...texts, ...found(name.replaceAll('/', '-'))]) holds(text)
  })

  test('holds whatever slips into it', () => {
    fc.assert(fc.property(slipped(texts), holds), {seed, numRuns: runs})
  })
})
