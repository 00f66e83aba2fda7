import {count, median, type Ratio, ratios, usagesOf} from './ratios.ts'
import {programNames, type Rounds, type Usage} from './usage.ts'

/** What was measured, as two Markdown tables: the programs, and the ratios between them. */
export function tables(rounds: Rounds): string {
  return `${programTable(rounds)}\n${ratioTable(rounds)}`
}

function programTable(rounds: Rounds): string {
  const rows = [...rounds].flatMap(([size, those]) =>
    programNames.flatMap((name) => {
      const usages = usagesOf(those, name)
      if (usages.length === 0) return []
      const column = (measure: (usage: Usage) => number, digits: number) =>
        spread(usages.map(measure), digits)
      return [
        [
          count(size),
          name,
          column(({wallSeconds}) => wallSeconds, 2),
          column(({cpuSeconds}) => cpuSeconds, 2),
          column(({peakMegabytes}) => peakMegabytes, 0),
        ],
      ]
    }),
  )
  return table(['recipes', 'program', 'wall, s', 'CPU, s', 'peak, MiB'], rows)
}

function ratioTable(rounds: Rounds): string {
  const rows = ratios(rounds).map((ratio) => [
    count(ratio.size),
    ratio.name,
    spread(ratio.values, 2),
    ratio.most === undefined ? '' : String(ratio.most),
    verdict(ratio),
  ])
  return table(['recipes', 'ratio', 'measured', 'at most', ''], rows)
}

function verdict({values, most}: Ratio): string {
  if (most === undefined) return ''
  if (values.length === 0) return 'failed'
  return median(values) <= most ? 'met' : 'missed'
}

/** `1.20 (1.10–1.35)`: the median and the range; a dash for what was not measured. */
function spread(values: readonly number[], digits: number): string {
  if (values.length === 0) return '–'
  const [low, middle, high] = [Math.min(...values), median(values), Math.max(...values)].map(
    (value) => value.toFixed(digits),
  )
  return low === high ? `${middle}` : `${middle} (${low}–${high})`
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |\n`
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('')
}
