import {readFileSync} from 'node:fs'
import {createRequire} from 'node:module'
import AjvDraft04 from 'ajv-draft-04'
import addFormats from 'ajv-formats'
import {describe, expect, test} from 'vitest'
import {githubReport} from '../../src/report/github-report.ts'
import {junitReport} from '../../src/report/junit-report.ts'
import type {Message, RecipeReport} from '../../src/report/report.ts'
import {sarifReport} from '../../src/report/sarif-report.ts'

const drift: Message = {
  file: 'content/recipes/pot.md',
  line: 12,
  column: 24,
  endLine: 12,
  endColumn: 28,
  rule: 'stated-macros',
  severity: 'error',
  reason: 'Stated fat `38 %`, expected <33 g> & "no more"',
  actual: '38 %',
  expected: ['33 g'],
  note: 'Write `33 g`.\nMost of it: barley 18 g.',
  url: 'rules/index.html#stated-macros',
}

const accepted: Message = {
  ...drift,
  file: 'content/recipes/a b, c:d.md',
  endLine: 14,
  rule: 'portion-weight',
  severity: 'note',
  note: 'Accepted: ladled, not weighed',
  accepted: 'ladled, not weighed',
}

const warning: Message = {...drift, line: 3, endLine: 3, rule: 'raw-egg', severity: 'warning'}

describe('findings as workflow commands', () => {
  // GitHub Docs, "Workflow commands for GitHub Actions"; escapes as its own toolkit has them
  // (actions/toolkit, packages/core/src/command.ts): % CR LF in all, : and , in properties.
  test('one a line, with its place and rule, and escapes', () => {
    expect([...githubReport([drift])]).toEqual([
      '::error file=content/recipes/pot.md,line=12,endLine=12,col=24,endColumn=28,title=stated-macros::' +
        'Stated fat `38 %25`, expected <33 g> & "no more"%0AWrite `33 g`.%0AMost of it: barley 18 g.\n',
    ])
  })

  test('columns only within one line, and no sign that would end a property', () => {
    expect([...githubReport([accepted])].join('')).toMatch(
      /^::notice file=content\/recipes\/a b%2C c%3Ad\.md,line=12,endLine=14,title=portion-weight::/u,
    )
  })
})

describe('findings as a SARIF log', () => {
  // The schema of the OASIS standard, as a package of its authors ships it.
  const schemaFile = createRequire(import.meta.url).resolve(
    '@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json',
  )
  const ajv = new AjvDraft04.default({strict: false, allErrors: true, unicodeRegExp: false})
  addFormats.default(ajv)
  const validate = ajv.compile(JSON.parse(readFileSync(schemaFile, 'utf8')))

  const context = {version: '1.2.3', address: 'https://rowing.example/table/'}

  test.each([
    ['no finding', [], context],
    ['findings', [drift, accepted, warning], context],
    ['a cookbook without address', [drift], {...context, address: undefined}],
  ])('%s fits the schema', (_, messages, about) => {
    validate(JSON.parse(sarifReport(messages, about)))
    expect(validate.errors).toBeNull()
  })

  test('the schema would refuse a log that is none', () => {
    const log = JSON.parse(sarifReport([drift], context))
    log.runs[0].results[0].level = 'fatal'
    log.runs[0].results[0].locations[0].physicalLocation.region.startLine = 0
    expect(validate(log)).toBe(false)
    expect(validate.errors?.map(({instancePath}) => instancePath)).toEqual(
      expect.arrayContaining([
        '/runs/0/results/0/level',
        '/runs/0/results/0/locations/0/physicalLocation/region/startLine',
      ]),
    )
  })

  test('every result names a rule of the tool by its index, and its place', () => {
    const {runs} = JSON.parse(sarifReport([drift, accepted], context))
    const [run] = runs
    expect(run.results).toMatchObject([
      {
        ruleId: 'stated-macros',
        level: 'error',
        locations: [
          {
            physicalLocation: {
              artifactLocation: {uri: 'content/recipes/pot.md'},
              region: {startLine: 12, startColumn: 24, endLine: 12, endColumn: 28},
            },
          },
        ],
      },
      {
        level: 'note',
        suppressions: [{kind: 'inSource', justification: 'ladled, not weighed'}],
        locations: [
          {physicalLocation: {artifactLocation: {uri: 'content/recipes/a%20b%2C%20c%3Ad.md'}}},
        ],
      },
    ])
    for (const {ruleId, ruleIndex} of run.results) {
      expect(run.tool.driver.rules[ruleIndex].id).toBe(ruleId)
    }
    expect(run.tool.driver.rules[0].helpUri).toBe(
      'https://rowing.example/table/rules/#stated-macros',
    )
  })
})

describe('findings as JUnit XML', () => {
  const recipes: readonly RecipeReport[] = ['pot', 'soup'].map((slug) => ({
    slug,
    file: `content/recipes/${slug}.md`,
    verdicts: {},
  }))
  const text = junitReport({recipes, messages: [accepted, warning, drift]})

  // Attributes and order as in junit-10.xsd of the Jenkins xUnit plugin.
  test('a suite a file, with the count of its cases', () => {
    expect(text).toMatch(
      /^<\?xml version="1\.0" encoding="UTF-8"\?>\n<testsuites name="scalepan" tests="4" failures="1" errors="0">/u,
    )
    const suites = [...text.matchAll(/<testsuite name="([^"]*)" tests="(\d+)" failures="(\d+)"/gu)]
    expect(suites.map(([, ...found]) => found)).toEqual([
      ['content/recipes/a b, c:d.md', '1', '0'],
      ['content/recipes/pot.md', '2', '1'],
      ['content/recipes/soup.md', '1', '0'],
    ])
  })

  test('an error is a failure, what passes says so, and a sound file is a case that passes', () => {
    expect(text).toContain(
      '<testcase classname="content/recipes/pot.md" name="stated-macros 12:24"><failure message="Stated fat `38 %`, expected &lt;33 g&gt; &amp; &quot;no more&quot;" type="stated-macros">content/recipes/pot.md:12:24  error  Stated fat',
    )
    expect(text).toContain('name="raw-egg 3:24"><system-out>')
    expect(text).toContain(
      '<testcase classname="content/recipes/soup.md" name="every rule"></testcase>',
    )
  })

  test('every element that opens closes', () => {
    const open: string[] = []
    for (const [, close, name = ''] of text.matchAll(/<(\/?)([a-z-]+)[^>]*>/gu)) {
      if (close === '') open.push(name)
      else expect(open.pop()).toBe(name)
    }
    expect(open).toEqual([])
  })
})
