import {afterEach, beforeEach, describe, expect, test, vi} from 'vitest'
import {hasColour, hasLinks} from '../../src/cli/colour.ts'
import {Progress} from '../../src/cli/progress.ts'

const clear = '\r\u001B[2K'

/** What was written to standard error. */
let written: string[] = []
const {isTTY} = process.stderr

function watchedBy(isTerminal: boolean, env: Readonly<Record<string, string | undefined>> = {}) {
  process.stderr.isTTY = isTerminal
  vi.stubEnv('CI', env.CI)
  return new Progress({quiet: env.quiet !== undefined})
}

beforeEach(() => {
  written = []
  vi.useFakeTimers()
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    written.push(String(text))
    return true
  })
})
afterEach(() => {
  process.stderr.isTTY = isTTY
  vi.unstubAllEnvs()
  vi.restoreAllMocks()
  vi.useRealTimers()
})

describe('progress', () => {
  test('says nothing of work that is soon done', () => {
    const progress = watchedBy(true)
    progress.begin('reading files')
    progress.expect(26)
    progress.beginStage('rendering')
    progress.end()
    expect(written).toEqual([])
  })

  test('says what is being done once it takes long, on one line, and clears it', () => {
    const progress = watchedBy(true)
    vi.advanceTimersByTime(600)
    progress.beginStage('computing')
    progress.beginStage('checking')
    progress.end()
    progress.end()
    const [computing, checking, end, ...more] = written
    expect(computing).toBe(`${clear}computing figures …`)
    expect(checking).toBe(`${clear}checking figures …`)
    expect([end, more]).toEqual([clear, []])
  })

  test('says so from the start where there is much to do', () => {
    const progress = watchedBy(true)
    progress.expect(3000)
    progress.beginStage('understanding')
    expect(written).toEqual([`${clear}reading the recipes …`])
  })

  test.each([
    ['in a pipe', false, {}],
    ['on a CI machine', true, {CI: 'true'}],
    ['where only errors are wanted', true, {quiet: 'yes'}],
  ])('is silent %s', (_, isTerminal, around) => {
    const progress = watchedBy(isTerminal, around)
    progress.expect(3000)
    progress.beginStage('understanding')
    progress.end()
    expect(written).toEqual([])
  })
})

test.each([
  ['a terminal', true, {}, true, true],
  ['a pipe', true, {}, false, false],
  ['a terminal that can do nothing', true, {TERM: 'dumb'}, true, false],
  ['NO_COLOR', true, {NO_COLOR: '1', FORCE_COLOR: '1'}, true, false],
  ['NO_COLOR with no text in it', true, {NO_COLOR: ''}, true, true],
  ['FORCE_COLOR in a pipe', true, {FORCE_COLOR: '1'}, false, true],
  ['FORCE_COLOR=false on a terminal', true, {FORCE_COLOR: 'false'}, true, false],
  ['--no-color', false, {FORCE_COLOR: '1'}, true, false],
])('colour: %s', (_, wanted, surroundings, isTerminal, colour) => {
  expect(hasColour(wanted, surroundings, isTerminal)).toBe(colour)
})

test.each([
  ['a terminal', true, {}, true, true],
  ['a pipe', true, {}, false, false],
  ['a pipe that is to be coloured', true, {FORCE_COLOR: '1'}, false, false],
  ['a terminal that can do nothing', true, {TERM: 'dumb'}, true, false],
  ['the console of Linux', true, {TERM: 'linux'}, true, false],
  ['NO_COLOR', true, {NO_COLOR: '1'}, true, false],
  ['--no-color', false, {}, true, false],
])('links: %s', (_, wanted, surroundings, isTerminal, links) => {
  expect(hasLinks(wanted, surroundings, isTerminal)).toBe(links)
})
