import path from 'node:path'
import type {Tried} from './trial.ts'

/** A table by folder, then everything no test noticed. */
export function report(
  tried: readonly Tried[],
  {mutants, tests}: {readonly mutants: number; readonly tests: number},
): string {
  const folders = [...new Set(tried.map(({file}) => path.dirname(file)))]
  const rows = folders.map((folder) =>
    row(
      folder,
      tried.filter(({file}) => path.dirname(file) === folder),
    ),
  )
  const left = tried.filter(({ended}) => ended === 'survived' || ended === 'unmet')
  return [
    `${tried.length} of ${mutants} mutants tried by ${tests} tests`,
    '',
    '| folder | mutants | killed | endless | survived | unmet | noticed |',
    '| --- | --- | --- | --- | --- | --- | --- |',
    ...rows,
    row('together', tried),
    '',
    ...left.map(
      ({file, line, change, original, replacement, ended, isOnLoad}) =>
        `${file}:${line} ${ended}${isOnLoad ? ' (on load)' : ''} ${change}\n  - ${oneLine(original)}\n  + ${oneLine(replacement)}`,
    ),
    '',
  ].join('\n')
}

function row(name: string, tried: readonly Tried[]): string {
  const count = (ended: Tried['ended']) => tried.filter((one) => one.ended === ended).length
  const [killed, endless] = [count('killed'), count('endless')]
  const noticed = `${((100 * (killed + endless)) / tried.length).toFixed(1)} %`
  const cells = [tried.length, killed, endless, count('survived'), count('unmet'), noticed]
  return `| ${[name, ...cells].join(' | ')} |`
}

function oneLine(text: string): string {
  return text.replaceAll(/\s+/gu, ' ').slice(0, 160)
}
