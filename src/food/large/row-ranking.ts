import {leastLikeness} from '../nearest-names.ts'

/** How well rows fit a written name, one number a row. */
export class RowRanking {
  readonly #scores: Float32Array
  /** The last written word that has counted for a row. */
  readonly #counted: Uint8Array
  #word = 0

  /** @param foods rows of the table */
  constructor(foods: number) {
    this.#scores = new Float32Array(foods)
    this.#counted = new Uint8Array(foods)
  }

  /** Goes on to another written word: each counts once for a row. At most 255. */
  nextWord(): void {
    this.#word++
  }

  /** @param score of the written word, likeness times its share; the best must come first */
  count(row: number, score: number): void {
    if (this.#counted[row] === this.#word) return
    this.#counted[row] = this.#word
    this.#scores[row] = (this.#scores[row] ?? 0) + score
  }

  /** Undefined for a row that has too little in common with what was written. */
  scoreOf(row: number): number | undefined {
    // Thirds and sixths of 1 do not add up exactly in 32 bits.
    const score = Math.round((this.#scores[row] ?? 0) * 1e4) / 1e4
    return score >= leastLikeness ? score : undefined
  }
}

/** A row that fits. */
export interface RankedRow {
  readonly row: number
  readonly score: number
  readonly nameLength: number
}

/** The best rows of many, in memory no more than twice as many as are kept. */
export class BestRows {
  readonly #most: number
  readonly #rows: RankedRow[] = []

  constructor(most: number) {
    this.#most = most
  }

  add(row: RankedRow): void {
    this.#rows.push(row)
    if (this.#rows.length > 2 * this.#most + 64) this.#rows.splice(0, Infinity, ...this.best())
  }

  /** Best first: by score, then the shortest name, then the order of the table. */
  best(): readonly RankedRow[] {
    return this.#rows.toSorted(better).slice(0, this.#most)
  }
}

function better(left: RankedRow, right: RankedRow): number {
  return right.score - left.score || left.nameLength - right.nameLength || left.row - right.row
}
