import {type MappedColumn, mappedUnits, type TableMapping} from '../food/import/table-mapping.ts'
import {tableColumns} from '../food/table-columns.ts'
import {nearest} from '../units/nearest.ts'
import type {Located, Problem} from './problem.ts'
import {type Report, reportInto} from './problems.ts'
import type {SourceText} from './sources.ts'
import {
  list,
  mapping,
  openMapping,
  optional,
  required,
  textOrMapping,
} from './yaml/collection-readers.ts'
import {parseYaml} from './yaml/parse-yaml.ts'
import {type Reader, rootReading} from './yaml/reader.ts'
import {choice, flag, text} from './yaml/text-readers.ts'
import {wholeFile} from './yaml/yaml-source.ts'

const headings = list('a list of headings', text)

const columnFields = mapping('a mapping with `from`', {
  from: required(text, 'Heading in the published table', 'which heading has the figures?'),
  add: optional(headings, 'Headings whose figures are added'),
  unit: optional(choice(mappedUnits), 'Unit of the published figures'),
  'zero is unknown': optional(flag, 'The table prints 0 where nobody measured'),
})

const columnReader = textOrMapping(text, columnFields)

const mappingReader = mapping('a mapping with `columns`', {
  'cells parted by': optional(choice(['comma', 'semicolon', 'tab']), 'What parts the cells'),
  decimals: optional(choice(['point', 'comma']), 'What parts the decimals'),
  unknown: optional(list('a list of texts', text), 'Cells for what nobody measured'),
  trace: optional(list('a list of texts', text), 'Cells for what is too little to print'),
  columns: required(
    openMapping('a mapping from columns such as `protein_g` to headings', columnReader),
    'Columns of the brought table, and where they come from',
    'which headings hold `id`, `name` and the figures?',
  ),
})

const delimiters = {comma: ',', semicolon: ';', tab: '\t'} as const

/** Reads how a published table becomes a brought one; undefined where it cannot be understood. */
export function readTableMapping(source: SourceText): {
  readonly mapping: TableMapping | undefined
  readonly problems: readonly Problem[]
} {
  const problems: Problem[] = []
  const report = reportInto(problems, source.path)
  const node = parseYaml(wholeFile(source.text), report)
  const values = node && mappingReader.read(node, rootReading('The file', report))?.value
  if (!values) return {mapping: undefined, problems}
  const columns = values.columns.value.flatMap(({key, value}) => mapped(key, value, report) ?? [])
  const [id, name] = ['id', 'name'].map((each) => columns.find(({column}) => column === each))
  if (!id || !name) {
    report({
      ruleId: 'key-present',
      place: values.columns.place,
      reason: `\`${id ? 'name' : 'id'}\` in \`columns\` is missing, expected the heading of each food's`,
    })
  }
  if (!id || !name || problems.length > 0) return {mapping: undefined, problems}
  return {
    problems,
    mapping: {
      delimiter: delimiters[values['cells parted by']?.value ?? 'comma'],
      decimals: values.decimals?.value ?? 'point',
      unknown: words(values.unknown),
      trace: words(values.trace),
      columns: [id, name, ...columns.filter((each) => each !== id && each !== name)],
    },
  }
}

type Written = typeof columnReader extends Reader<infer V> ? V : never

function mapped(
  {value: key, place}: Located<string>,
  {value}: Located<Written>,
  report: Report,
): MappedColumn | undefined {
  const known = ['id', 'name', ...tableColumns] as const
  const column = known.find((each) => each === key)
  if (column === undefined) {
    const meant = nearest(key, known)
    report({
      ruleId: 'known-key',
      place,
      actual: key,
      reason: `Unknown column \`${key}\`, expected ${meant ? `\`${meant}\`` : `one of ${known.map((each) => `\`${each}\``).join(', ')}`}`,
    })
    return undefined
  }
  if (typeof value === 'string') return {column, from: [value], zeroIsUnknown: false}
  const {from, add, unit, 'zero is unknown': zero} = value
  return {
    column,
    from: [from.value, ...(add?.value.map((each) => each.value) ?? [])],
    ...(unit && {unit: unit.value}),
    zeroIsUnknown: zero?.value ?? false,
  }
}

function words(listed: Located<readonly Located<string>[]> | undefined): ReadonlySet<string> {
  return new Set(listed?.value.map(({value}) => value))
}
