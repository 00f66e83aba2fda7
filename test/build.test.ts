import {expect, test} from 'vitest'
import {build, examine, type Stage} from '../src/build.ts'
import type {ReadCookbook} from '../src/cookbook/sources.ts'

const front = ['---', 'title: Pot', 'serves: 2', 'yield: 300 g', 'ingredients:', '  onion: 400 g']
const stylesheet = [{path: 'assets/site.css', content: 'css'}]

/** Onion, raw, USDA SR28 NDB 11282: 40 kcal per 100 g; two of 200 g each have 80 kcal. */
function pot(energy: string): ReadCookbook {
  const text = [...front, `stated: { energy: ${energy} }`, '---', '', '[Onion](#onion).', ''].join(
    '\n',
  )
  return {sources: {texts: [{path: 'recipes/pot.md', text}], images: []}, problems: []}
}

const paths = (read: ReadCookbook) => build(read, stylesheet).files.map(({path}) => path)

test('a cookbook whose figures follow becomes pages, with the assets they load', () => {
  expect(paths(pot('80 kcal'))).toEqual(
    expect.arrayContaining(['index.html', 'recipes/pot/index.html', 'assets/site.css']),
  )
})

test('a cookbook with one error becomes no page at all', () => {
  const built = build(pot('140 kcal'), stylesheet)
  expect(built.problems).toMatchObject([{ruleId: 'stated-macros', severity: 'error'}])
  expect(built.files).toEqual([])
  expect(built.computed.has('pot')).toBe(true)
})

test('an error found on reading the folder counts as any other; a warning lets it pass', () => {
  const problem = {ruleId: 'file-name', file: 'recipes/a.txt', reason: 'Not read'}
  const found = (severity: 'error' | 'warning') => ({
    ...pot('80 kcal'),
    problems: [{...problem, severity}],
  })
  expect(paths(found('error'))).toEqual([])
  expect(paths(found('warning'))).toContain('index.html')
})

test('the same texts give the same bytes', () => {
  expect(build(pot('80 kcal'), stylesheet).files).toEqual(build(pot('80 kcal'), stylesheet).files)
})

test('problems of every stage stand in one order: by path, then position', () => {
  const texts = [
    {path: 'recipes/a.md', text: 'no front matter'},
    {path: 'recipes/b.md', text: front.join('\n').replace('onion', 'onoin').concat('\n---\n')},
    ...pot('140 kcal').sources.texts,
  ]
  const problems = [
    {ruleId: 'file-name', file: 'cookbook.yml', reason: 'Not read', severity: 'warning' as const},
  ]
  const found = examine({sources: {texts: texts.toReversed(), images: []}, problems}).problems
  expect([...new Set(found.map(({file}) => file))]).toEqual([
    'cookbook.yml',
    'recipes/a.md',
    'recipes/b.md',
    'recipes/pot.md',
  ])
})

test('who watches is told every stage as it begins', () => {
  const stages: Stage[] = []
  build(pot('80 kcal'), stylesheet, {begin: (stage) => stages.push(stage)})
  expect(stages).toEqual(['understanding', 'computing', 'checking', 'rendering'])
})
