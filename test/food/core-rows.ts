import {coreAisles} from '../../src/food/core-aisles.ts'
import {type CoreRow, coreColumns, coreLines, coreRow} from '../../src/food/core-row.ts'
import type {Aisle} from '../../src/food/food.ts'

/** Every row of the core table, with the aisle whose file it stands in. */
export const coreRows: readonly {readonly aisle: Aisle; readonly row: CoreRow}[] =
  coreAisles.flatMap(({aisle, text}) =>
    coreLines(text).map((line) => ({aisle, row: coreRow(line)})),
  )

type Column = (typeof coreColumns)[number]['nutrient']

/** A printed figure of a row; undefined where it is blank. */
export function printedFigure(row: CoreRow, column: Column): number | undefined {
  return row.figures[coreColumns.findIndex(({nutrient}) => nutrient === column)] ?? undefined
}
