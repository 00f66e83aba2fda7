/** I/O: sources with every mutant in them, each behind a switch. */

import {readFileSync} from 'node:fs'
import path from 'node:path'
import {Instrumenter} from '@stryker-mutator/instrumenter'

/** One change of one place. */
export interface Mutant {
  readonly id: string
  /** Relative to the project. */
  readonly file: string
  /** From 1. */
  readonly line: number
  /** What kind of change, in the instrumenter's words. */
  readonly change: string
  readonly original: string
  readonly replacement: string
}

export interface Mutated {
  readonly mutants: readonly Mutant[]
  /** Text with switches by file, relative to the project. */
  readonly texts: ReadonlyMap<string, string>
}

/** @param files relative to the project */
export async function mutate(project: string, files: readonly string[]): Promise<Mutated> {
  const texts = new Map(files.map((file) => [file, readFileSync(path.join(project, file), 'utf8')]))
  const instrumented = await new Instrumenter(silent).instrument(
    [...texts].map(([name, content]) => ({name, content, mutate: true})),
    {plugins: null, excludedMutations: [], ignorers: []},
  )
  return {
    mutants: instrumented.mutants
      .filter(({status}) => status !== 'Ignored')
      .map(({id, fileName, location: {start, end}, mutatorName, replacement}) => ({
        id,
        file: fileName,
        line: start.line + 1,
        change: mutatorName,
        original: between(texts.get(fileName) ?? '', start, end),
        replacement,
      })),
    texts: new Map(instrumented.files.map(({name, content}) => [name, content])),
  }
}

interface Point {
  readonly line: number
  readonly column: number
}

function between(text: string, start: Point, end: Point): string {
  const lines = text.split('\n').slice(start.line, end.line + 1)
  const last = lines.length - 1
  return lines
    .map((line, index) =>
      line.slice(index === 0 ? start.column : 0, index === last ? end.column : line.length),
    )
    .join('\n')
}

const nothing = (): void => undefined
const never = (): boolean => false

/** The instrumenter logs to an object with these methods. */
const silent = {
  isTraceEnabled: never,
  isDebugEnabled: never,
  isInfoEnabled: never,
  isWarnEnabled: never,
  isErrorEnabled: never,
  isFatalEnabled: never,
  trace: nothing,
  debug: nothing,
  info: nothing,
  warn: nothing,
  error: nothing,
  fatal: nothing,
}
