/** What is fuzzed in this process, and what must hold for any text at all. */

import process from 'node:process'
import {build} from '../../src/build.ts'
import {pointsOf} from '../../src/cookbook/points.ts'
import type {Problem} from '../../src/cookbook/problem.ts'
import type {SourceText} from '../../src/cookbook/sources.ts'
import {svgFault} from '../../src/cookbook/still-svg.ts'
import {formatAmount} from '../../src/units/format-amount.ts'
import {type Kitchen, parseAmount} from '../../src/units/parse-amount.ts'
import {cookbookTexts, linesOf} from './corpus.ts'

export interface Target {
  readonly name: string
  readonly texts: readonly string[]
  /** Throws where something does not hold. */
  readonly holds: (text: string) => void
}

/** Longest that a cookbook of a few small files may take to be built, s of processor time. */
const longestSeconds = 3

const book = cookbookTexts()

/** The files of the cookbook one by one, then its smaller languages. */
export const targets: readonly Target[] = [
  ...book.map(({path, text}) => ({
    name: path,
    texts: [text],
    holds: (slipped: string) => holdsForCookbook(path, slipped),
  })),
  {name: 'amounts', texts: linesOf('amounts.txt'), holds: holdsForAmount},
  {
    name: 'svg',
    texts: ['<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><path d="M0 0h9"/></svg>'],
    holds: holdsForSvg,
  },
]

function holdsForCookbook(path: string, written: string): void {
  // As a file is handed over once it is decoded.
  const text = written.replace(/^\uFEFF+/u, '')
  const texts = book.map((source) => (source.path === path ? {path, text} : source))
  const began = process.cpuUsage()
  const {problems, files} = build({sources: {texts, images: []}, problems: []}, [], {
    today: '2026-11-25',
  })
  const {user, system} = process.cpuUsage(began)
  must((user + system) / 1e6 <= longestSeconds, `took ${(user + system) / 1e6} s`)
  const hasErrors = problems.some(({severity}) => severity === 'error')
  must(hasErrors === (files.length === 0), 'pages beside errors, or neither')
  for (const problem of problems) holdsForProblem(problem, texts)
}

/** Every message is one line of a known rule, and its place lies in a text of the cookbook. */
function holdsForProblem({file, place, reason, fix}: Problem, texts: readonly SourceText[]): void {
  must(/^[^\r\n]*[^.\r\n]$/u.test(reason), `reason ${JSON.stringify(reason)}`)
  const text = texts.find((source) => source.path === file)?.text
  must(text !== undefined, `a message about ${file}, which is not there: ${reason}`)
  must(place !== undefined, `no place: ${reason}`)
  const pointAt = pointsOf(text ?? '')
  for (const one of [place, fix?.place]) {
    if (one === undefined) continue
    const [start, end] = [one.start.offset ?? 0, one.end.offset ?? 0]
    must(
      start >= 0 && start <= end && end <= (text ?? '').length,
      `offsets ${start}, ${end}: ${reason}`,
    )
    for (const point of [one.start, one.end]) {
      if (point.offset === undefined) continue
      const {line, column} = pointAt(point.offset)
      must(
        line === point.line && column === point.column,
        `point ${JSON.stringify(point)}: ${reason}`,
      )
    }
  }
}

const kitchen: Kitchen = {cups: 'metric', measures: new Set(['scoop', 'pot'])}

/** What can be read is finite, above nothing, and read again from what it is written as. */
function holdsForAmount(text: string): void {
  const read = parseAmount(text, kitchen)
  if (!read.ok) {
    must(/^[^\r\n]+$/u.test(read.expected), `expected ${JSON.stringify(read.expected)}`)
    return
  }
  const again = parseAmount(formatAmount(read.value), kitchen)
  must(again.ok, `${formatAmount(read.value)} cannot be read`)
  const value = (amount: typeof read.value): number =>
    amount.kind === 'weight'
      ? amount.grams.value
      : amount.kind === 'batch'
        ? amount.batches.value
        : amount.count.value
  const size = value(read.value)
  must(Number.isFinite(size) && size > 0, `size ${size}`)
  if (again.ok)
    must(Math.abs(value(again.value) / size - 1) < 1e-9, `read again ${value(again.value)}`)
}

function holdsForSvg(text: string): void {
  const fault = svgFault(text)
  if (fault === undefined) return
  must(fault.start >= 0 && fault.start <= fault.end && fault.end <= text.length, 'place')
}

function must(holds: boolean, otherwise: string): void {
  if (!holds) throw new Error(otherwise)
}
