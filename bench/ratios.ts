import type {ProgramName, Round, Rounds, Usage} from './usage.ts'

/** A ratio that is computed in each round by itself, so that both sides met the same machine. */
export interface Ratio {
  readonly name: string
  /** Recipes of the cookbook, the larger one where two are compared. */
  readonly size: number
  /** One a round, in the rounds' order; of rounds whose programs ran to their end. */
  readonly values: readonly number[]
  /** What it has to be at most; none where it is shown for comparison. */
  readonly most?: number
}

type Measure = (usage: Usage) => number

const wall: Measure = ({wallSeconds}) => wallSeconds
const cpu: Measure = ({cpuSeconds}) => cpuSeconds
const peak: Measure = ({peakMegabytes}) => peakMegabytes

interface Compared {
  readonly name: string
  readonly measure: Measure
  readonly of: ProgramName
  readonly to: ProgramName
  /** At most, by size; one number holds at every size. */
  readonly most?: Readonly<Record<number, number>> | number
}

const compared: readonly Compared[] = [
  {
    name: 'cold build, wall / B',
    measure: wall,
    of: 'cold',
    to: 'B',
    most: {100: 1.25, 1000: 1, 10000: 0.75},
  },
  {name: 'cold build, CPU / B', measure: cpu, of: 'cold', to: 'B', most: {10000: 1.25}},
  {name: 'cold build, peak memory / B', measure: peak, of: 'cold', to: 'B', most: {10000: 3}},
  {name: 'no change, wall / R', measure: wall, of: 'unchanged', to: 'R', most: {10000: 2}},
  {name: 'no change, CPU / R', measure: cpu, of: 'unchanged', to: 'R'},
  {name: 'one edit, wall / R', measure: wall, of: 'one edit', to: 'R', most: {10000: 3}},
  {name: 'one edit, CPU / R', measure: cpu, of: 'one edit', to: 'R'},
  {name: 'check, wall / B', measure: wall, of: 'check', to: 'B'},
  {name: 'check, CPU / B', measure: cpu, of: 'check', to: 'B'},
  {name: '`--version`, wall / E', measure: wall, of: 'version', to: 'E', most: 1.5},
  {name: 'G, wall / B', measure: wall, of: 'G', to: 'B'},
  {name: 'cold build, wall / G', measure: wall, of: 'cold', to: 'G'},
]

/** Every ratio that the rounds allow, by size. */
export function ratios(rounds: Rounds): readonly Ratio[] {
  const sizes = [...rounds.keys()].toSorted((left, right) => left - right)
  return [
    ...sizes.flatMap((size) => compared.flatMap((each) => within(each, size, rounds))),
    ...sizes.flatMap((size, index) => {
      const smaller = sizes[index - 1]
      return smaller === undefined ? [] : between(smaller, size, rounds)
    }),
  ]
}

function within(
  {name, measure, of, to, most}: Compared,
  size: number,
  rounds: Rounds,
): readonly Ratio[] {
  const values = (rounds.get(size) ?? []).flatMap((round) => {
    const [above, below] = [round.get(of), round.get(to)]
    return above && below ? [measure(above) / measure(below)] : []
  })
  const target = typeof most === 'number' ? most : most?.[size]
  // Where there is a target, a program that failed must not leave the table in silence.
  return values.length === 0 && target === undefined
    ? []
    : [{name, size, values, ...(target !== undefined && {most: target})}]
}

/** Grows with the number of recipes by no more than this, MiB for 1,000. */
const growthMegabytes = 12
/** Below this many recipes, starting up is most of what is measured, and there is no target. */
const leastTargeted = 1_000

/** How time and memory of a cold build grow from one size to a larger one. */
function between(smaller: number, larger: number, rounds: Rounds): readonly Ratio[] {
  const pairs = (rounds.get(larger) ?? []).flatMap((round, index) => {
    const [large, small] = [round.get('cold'), rounds.get(smaller)?.[index]?.get('cold')]
    return large && small ? [{large, small}] : []
  })
  const isTargeted = smaller >= leastTargeted
  return [
    {
      name: `cold build, wall / that of ${count(smaller)}`,
      size: larger,
      values: pairs.map(({large, small}) => wall(large) / wall(small)),
      ...(isTargeted && {most: larger / smaller}),
    },
    {
      name: `cold build, MiB more for each 1,000 beyond ${count(smaller)}`,
      size: larger,
      values: pairs.map(
        ({large, small}) => (peak(large) - peak(small)) / ((larger - smaller) / 1_000),
      ),
      ...(isTargeted && {most: growthMegabytes}),
    },
  ]
}

/** 10000 as `10,000`. */
export function count(value: number): string {
  return String(value).replace(/\B(?=(?:\d{3})+$)/gu, ',')
}

/** The middle value; of an even number, the mean of the two in the middle. */
export function median(values: readonly number[]): number {
  const inOrder = values.toSorted((left, right) => left - right)
  const middle = inOrder.slice(
    Math.ceil(inOrder.length / 2) - 1,
    Math.floor(inOrder.length / 2) + 1,
  )
  return middle.reduce((sum, value) => sum + value, 0) / middle.length
}

export function usagesOf(rounds: readonly Round[], name: ProgramName): readonly Usage[] {
  return rounds.flatMap((round) => round.get(name) ?? [])
}
