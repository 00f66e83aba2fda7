import type {Report} from './report.ts'

/**
 * A report as JSON, one recipe and one message a line, in pieces: a reader may take it in as it
 * comes, and no cookbook is too big for one text.
 */
export function* jsonReport({recipes, messages}: Report): Iterable<string> {
  yield '{"recipes":['
  yield* jsonLines(recipes)
  yield '],\n"messages":['
  yield* jsonLines(messages)
  yield ']}\n'
}

function* jsonLines(values: Iterable<unknown>): Iterable<string> {
  let before = '\n'
  for (const value of values) {
    yield `${before}${JSON.stringify(value)}`
    before = ',\n'
  }
  yield '\n'
}
