import type {HeaderColumn} from '../table-header.ts'

/** Units a national table may print its figures in. */
export const mappedUnits = ['kcal', 'kJ', 'g', 'mg', 'µg'] as const

export type MappedUnit = (typeof mappedUnits)[number]

/** Where one column of a brought table comes from. */
export interface MappedColumn {
  readonly column: HeaderColumn
  /** Headings of the published table; figures of several are added up. */
  readonly from: readonly string[]
  /** Unit of the published figures; absent: the column's own. */
  readonly unit?: MappedUnit
  /** The table prints 0 where nobody measured. */
  readonly zeroIsUnknown: boolean
}

/** How a published table is read. */
export interface TableMapping {
  readonly delimiter: ',' | ';' | '\t'
  readonly decimals: 'point' | 'comma'
  /** Cells that stand for a figure nobody has; an empty one always does. */
  readonly unknown: ReadonlySet<string>
  /** Cells that stand for an amount too small to print. */
  readonly trace: ReadonlySet<string>
  /** `id` and `name` first. */
  readonly columns: readonly MappedColumn[]
}
