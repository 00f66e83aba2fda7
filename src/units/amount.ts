/** An amount as a recipe line gives it, before the food turns it into grams. */

/** How exactly the number was written. */
export interface Measured {
  /** The number; the middle of a range (`10-12 g` is 11). */
  readonly value: number
  /** Half the written range, 0 for a single number; same unit as `value`. */
  readonly halfRange: number
  /** Unit of the last written digit: 1 for `150 g`, 0.1 for `13.5 g`; same unit as `value`. */
  readonly increment: number
}

export type Amount = WeightAmount | VolumeAmount | CountAmount | BatchAmount

interface Written {
  /** As the writer has it, trimmed: `13.5 g (1 tbsp)`. */
  readonly text: string
  /** The kitchen measure in brackets beside a weight, which is checked against the food's own. */
  readonly beside?: VolumeAmount | CountAmount
}

/** `grams` is in grams whatever unit was written. */
export interface WeightAmount extends Written {
  readonly kind: 'weight'
  readonly grams: Measured
}

/** `millilitres` is in millilitres whatever unit was written; `measure` is the unit as a food knows it. */
export interface VolumeAmount extends Written {
  readonly kind: 'volume'
  readonly millilitres: Measured
  /** `cup`, `tbsp`, `tsp`, `ml` …: a food's own gram weight of that measure comes first. */
  readonly measure: string
  /** How many of `measure`. */
  readonly count: Measured
}

/** `2 cloves`, `1 medium`, `3` (measure `each`). */
export interface CountAmount extends Written {
  readonly kind: 'count'
  readonly count: Measured
  readonly measure: string
}

/** `½ batch`: a share of a component's whole batch; needs no scale. */
export interface BatchAmount extends Written {
  readonly kind: 'batch'
  readonly batches: Measured
}
