import {formatFigure, roundedText} from '../units/format-figure.ts'
import type {Explanation} from './explanation.ts'
import {printable} from './printable.ts'
import {textTable} from './text-table.ts'

/** Baker's percentages, hydration, and the pieces of the dough. */
export function bakingRows({baking, pieces}: Explanation): readonly string[] {
  return [...(baking ? formulaRows(baking) : []), ...(pieces ? [piecesRow(pieces)] : [])]
}

function formulaRows(baking: NonNullable<Explanation['baking']>): readonly string[] {
  const {rows, hydrationPercent, effectiveHydrationPercent: effective, atLeast} = baking
  const table = rows.map(({name, grams, percent}) => [
    printable(name),
    formatFigure(grams, 'g'),
    `${roundedText(percent, 1)} %`,
  ])
  return [
    ...textTable(table),
    `hydration: ${roundedText(hydrationPercent, 0)} % plain water, ${atLeast ? '≥ ' : ''}${roundedText(effective, 0)} % with that of milk, eggs and the rest`,
  ]
}

function piecesRow({count, gramsEach, leftGrams}: NonNullable<Explanation['pieces']>): string {
  return `pieces: ${count} of ${formatFigure(gramsEach, 'g')}, ${formatFigure(leftGrams, 'g')} left over`
}
