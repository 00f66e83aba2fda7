import {existsSync} from 'node:fs'
import path from 'node:path'
import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import {fdcNutrients} from '../food/import/fdc-nutrients.ts'
import {type HeadedRow, headedRowsOf, refusal, rowsOf} from './download-rows.ts'

/** How many rows each file has, where the download says so; name and shape from memory. */
const countsFile = 'all_downloaded_table_record_counts.csv'

/** A folder of FoodData Central's CSV files. */
export class FdcFolder {
  readonly #folder: string
  /** Rows of each table, as the download itself counts them. */
  readonly #counts: ReadonlyMap<string, number>

  static async open(folder: string): Promise<FdcFolder> {
    const file = path.join(folder, countsFile)
    const counts = new Map<string, number>()
    if (existsSync(file)) {
      for await (const row of rowsOf(file, ',')) {
        const [table = '', count = ''] = row.cells
        if (row.line === 1 || table === '') continue
        if (!/^\d+$/.test(count)) throw refusal(file, row, `a count of rows, not \`${count}\``)
        counts.set(table, Number(count))
      }
    }
    return new FdcFolder(folder, counts)
  }

  private constructor(folder: string, counts: ReadonlyMap<string, number>) {
    this.#folder = folder
    this.#counts = counts
  }

  /** @param table name of the file without `.csv` */
  file(table: string): string {
    return path.join(this.#folder, `${table}.csv`)
  }

  /** Rows of a file. Fewer or more than the download counts are refused when they are all read. */
  async *rows<const H extends string>(
    table: string,
    headings: readonly H[],
  ): AsyncIterable<HeadedRow<H>> {
    let count = 0
    for await (const row of headedRowsOf(this.file(table), headings)) {
      count++
      yield row
    }
    const expected = this.#counts.get(table) ?? count
    if (count === expected) return
    throw new EnvironmentFailure(
      `${this.file(table)} has ${count} rows, expected ${expected} as ${countsFile} says`,
      'Nothing was imported; the file is cut off, or from another download',
    )
  }

  async checkUnits(): Promise<void> {
    for await (const {row, cell} of this.rows('nutrient', ['id', 'name', 'unit_name'])) {
      const nutrient = fdcNutrients.get(cell('id'))
      const unit = cell('unit_name').toUpperCase()
      if (nutrient && unit !== nutrient.unit) {
        const expected = `\`${cell('name')}\` in \`${nutrient.unit}\`, not in \`${unit}\``
        throw refusal(this.file('nutrient'), row, expected)
      }
    }
  }
}
