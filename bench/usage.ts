/** What one run of a program used, start and end of the process included. */
export interface Usage {
  readonly wallSeconds: number
  /** Of all threads, user and system. */
  readonly cpuSeconds: number
  /** Resident memory at its highest, MiB. */
  readonly peakMegabytes: number
}

/** The programs measured beside each other; what each does: bench/README.md. */
export const programNames = [
  'E',
  'R',
  'B',
  'G',
  'version',
  'check',
  'cold',
  'unchanged',
  'one edit',
] as const
export type ProgramName = (typeof programNames)[number]

/** One run of every program on cookbooks of one size; what was not run is not in it. */
export type Round = ReadonlyMap<ProgramName, Usage>

/** Rounds by the number of recipes; the rounds of two sizes with one index ran next to each other. */
export type Rounds = ReadonlyMap<number, readonly Round[]>
