/** DATA.md against the sources: whatever a file names as where its figures come from stands there. */

import {readdirSync, readFileSync} from 'node:fs'
import path from 'node:path'
import {fileURLToPath} from 'node:url'
import {describe, expect, test} from 'vitest'
import {cookbookRules, recipeRules} from '../src/check/rules.ts'
import {coreTable} from '../src/food/core-table.ts'
import {methodName} from '../src/food/method-factors.ts'

const project = fileURLToPath(new URL('..', import.meta.url))
const page = readFileSync(path.join(project, 'DATA.md'), 'utf8')

/** How sources are named: acts and their parts, releases, agencies. */
const namings: readonly RegExp[] = [
  /\b21 CFR 101\.\d+/gu,
  /\b\d+ FR \d{4,}/gu,
  /\bRegulation \(E[UC]\) \d+\/\d+/gu,
  /\bRelease \d+|\bSR28\b|\bIFCT 2017\b|\bFoodData Central\b/gu,
  /\bHandbook \d+|\bAH-\d+|\bSpecial Publication \d+/gu,
  /\bJCGM \d+:\d+|\bWeights and Measures Act \d+/gu,
  /\bFood Code \d{4}|\bBad Bug Book\b|\bCold Food Storage Chart\b/gu,
  /\bUSDA (?:FSIS|National Agricultural Library|Table of [A-Z][A-Za-z ]+)|\bfoodsafety\.gov\b/gu,
  /\bUS (?:CDC|FDA)\b|\bAAP\b|\bFood Standards Agency\b|\bEuropean Commission\b|\bEFSA\b/gu,
  /\bFDA guidance of [A-Z][a-z]+ \d{4}|\b(?:FAO|INFOODS|EuroFIR|WHO|PDCAAS)\b/gu,
]

/** Folders with figures in them, and what else decides what a dish holds. */
const folders = ['src/food', 'src/nutrition', 'src/check', 'src/units'] as const

function sourcesNamed(text: string): readonly string[] {
  // A comment or a text in the sources goes on in its next line.
  const whole = text.replace(/\n\s*(?:\*|\/\/) ?/gu, ' ').replace(/\s+/gu, ' ')
  return namings.flatMap((naming) => [...whole.matchAll(naming)].map(([name]) => name))
}

/** The page lists the sections of a part once: `21 CFR 101.12, 101.13, 101.54`. */
function isOnPage(name: string): boolean {
  const section = /^21 CFR (101\.\d+)$/u.exec(name)?.[1]
  const isWord = new RegExp(
    `(?<![\\d.])${(section ?? name).replaceAll(/[.()]/gu, '\\$&')}(?!\\d)`,
    'u',
  )
  return isWord.test(page.replace(/\s+/gu, ' '))
}

describe('DATA.md', () => {
  const files = folders.flatMap((folder) =>
    readdirSync(path.join(project, folder), {recursive: true, encoding: 'utf8'})
      .filter((file) => file.endsWith('.ts'))
      .map((file) => path.posix.join(folder, file)),
  )

  test('has every source that a file with figures names', () => {
    const named = new Map<string, string>()
    for (const file of files) {
      const text = readFileSync(path.join(project, file), 'utf8')
      for (const name of sourcesNamed(text)) named.set(name, file)
    }
    expect(named.size).toBeGreaterThan(30)
    const missing = [...named].filter(([name]) => !isOnPage(name))
    expect(missing).toEqual([])
  })

  test('has every source of a food of the built-in table, and of an energy method', () => {
    const documents = (['us', 'eu'] as const).flatMap((rules) =>
      coreTable(rules)
        .foods()
        .map(({provenance}) => {
          if (provenance.kind === 'regulation') return provenance.document
          return provenance.kind === 'table' ? provenance.table : 'a label'
        }),
    )
    expect(new Set(documents).size).toBeGreaterThan(4)
    for (const document of new Set([...documents, ...Object.values(methodName)])) {
      const names = sourcesNamed(document)
      const isNamed = names.length > 0 && names.every(isOnPage)
      expect(isNamed || /^FDA guidance on|^EU 1169\/2011/u.test(document), document).toBe(true)
    }
  })

  test('has every source that a rule gives on its page', () => {
    for (const {id, source = ''} of [...recipeRules, ...cookbookRules]) {
      expect(
        sourcesNamed(source).filter((name) => !isOnPage(name)),
        id,
      ).toEqual([])
    }
  })

  test('leads to files that are there', () => {
    const paths = [...page.matchAll(/`((?:src|templates|docs)\/[^`*]+)`/gu)].map(
      ([, file = '']) => file,
    )
    expect(paths.length).toBeGreaterThan(20)
    const missing = paths.filter((file) => {
      const {dir, base} = path.parse(file)
      return base !== '' && !readdirSync(path.join(project, dir)).includes(base)
    })
    expect(missing).toEqual([])
  })
})
