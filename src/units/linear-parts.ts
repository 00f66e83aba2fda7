import type {Source} from './source.ts'

/** What each source adds to a value; see `Uncertain`. */
export type Parts = Pick<
  ReadonlyMap<Source, number>,
  'size' | 'has' | 'keys' | 'values' | typeof Symbol.iterator
>

/** `factor` × a quantity's parts, as one term of a sum. */
export interface PartsTerm {
  readonly parts: Parts
  readonly factor: number
}

/**
 * The parts of a weighted sum, added up when somebody first looks at them. Most figures of a big
 * cookbook are only ever compared by value; flattening the whole sum at once, and not one map for
 * each step of it, keeps the rest cheap.
 */
export class LinearParts implements Parts {
  #terms: readonly PartsTerm[]
  #flat: Map<Source, number> | undefined
  #isInSum = false

  constructor(terms: readonly PartsTerm[]) {
    this.#terms = terms
  }

  get #map(): Map<Source, number> {
    if (this.#flat === undefined) {
      const flat = new Map<Source, number>()
      this.#addInto(flat, 1)
      this.#flat = flat
      this.#terms = []
    }
    return this.#flat
  }

  #addInto(flat: Map<Source, number>, factor: number): void {
    for (const {parts, factor: own} of this.#terms) {
      // What stands in a second sum is flattened: components that share components would otherwise
      // be added up once for every way that leads to them.
      if (parts instanceof LinearParts && parts.#flat === undefined && !parts.#isInSum) {
        parts.#isInSum = true
        parts.#addInto(flat, factor * own)
      } else {
        for (const [source, part] of parts) {
          flat.set(source, (flat.get(source) ?? 0) + part * factor * own)
        }
      }
    }
  }

  get size(): number {
    return this.#map.size
  }

  has(source: Source): boolean {
    return this.#map.has(source)
  }

  keys(): MapIterator<Source> {
    return this.#map.keys()
  }

  values(): MapIterator<number> {
    return this.#map.values()
  }

  [Symbol.iterator](): MapIterator<[Source, number]> {
    return this.#map[Symbol.iterator]()
  }
}
