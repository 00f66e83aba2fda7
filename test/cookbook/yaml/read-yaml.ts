import type {Problem} from '../../../src/cookbook/problem.ts'
import {reportInto} from '../../../src/cookbook/problems.ts'
import {parseYaml} from '../../../src/cookbook/yaml/parse-yaml.ts'
import {type Reader, rootReading} from '../../../src/cookbook/yaml/reader.ts'
import {wholeFile} from '../../../src/cookbook/yaml/yaml-source.ts'

/** Reads a whole .yaml text with one reader. */
export function readYaml<T>(yaml: string, reader: Reader<T>) {
  const problems: Problem[] = []
  const report = reportInto(problems, 'foods.yaml')
  const node = parseYaml(wholeFile(yaml), report)
  const value = node && reader.read(node, rootReading('The file', report))?.value
  return {value, problems, reasons: problems.map(({reason}) => reason)}
}

/** The text of `source` that a problem points at. */
export function pointedAt(source: string, problem: Problem | undefined): string | undefined {
  const {start, end} = problem?.place ?? {}
  return source.slice(start?.offset ?? 0, end?.offset ?? 0)
}
