import type {Passage, Recipe} from '../../cookbook/recipe.ts'
import {orderedSteps, type TimeInStep, timesBeside, timesInSteps} from './time-in-steps.ts'
import {type Occupation, occupationOf} from './wait-or-work.ts'

/** A part of a step, in minutes since the start of the cooking. */
export interface Stretch {
  readonly occupation: Occupation
  readonly fromMinutes: number
  readonly toMinutes: number
}

export interface TimedStep {
  readonly passage: Passage
  readonly fromMinutes: number
  readonly toMinutes: number
  readonly stretches: readonly Stretch[]
  /** Its text says that it runs beside the step before. */
  readonly isBeside: boolean
}

/** When each step begins, if one follows the other. All in minutes, 0 or more. */
export interface Timetable {
  readonly steps: readonly TimedStep[]
  readonly totalMinutes: number
  /** Work that the recipe's time has and no step tells: shared evenly among the steps. */
  readonly sharedWorkMinutes: number
  /** What is left of the recipe's time then: gaps behind the steps, as even. */
  readonly gapMinutes: number
  /** Work that only fits into the waiting, if the recipe's time is right. */
  readonly workInWaitsMinutes: number
  /** The steps take longer than the recipe says, by so much. */
  readonly beyondMinutes: number
  /** The recipe does not say how long it takes, so that steps without a time have none. */
  readonly isOpen: boolean
}

/**
 * The steps one after the other, from their own times and from `time`. What can be done at the same
 * time is known only where the text says so ("meanwhile"), so nothing else runs side by side.
 * @returns undefined where there is nothing to wait for, which leaves nothing to plan
 */
export function timetable(recipe: Recipe): Timetable | undefined {
  const steps = orderedSteps(recipe)
  const times = timesInSteps(recipe)
  const plain = times.map((time) => ({...time, occupation: occupationOf(time)}))
  if (!plain.some(({occupation}) => occupation === 'wait')) return undefined
  const lengths = lengthsOf(times, recipe.totalMinutes?.value)
  const told = plain.map((time, index) => ({...time, minutes: lengths[index] ?? 0}))
  const beside = besideSteps(recipe)
  const rest = restOf(
    recipe,
    told.filter(({passage}) => !beside.has(passage)),
  )
  const takers = steps.filter((step) => !beside.has(step)).length
  const laid = laidOut(steps, {
    told,
    beside,
    work: evenly(rest.sharedWorkMinutes, takers),
    gaps: evenly(rest.gapMinutes, takers),
  })
  return {...laid, ...rest}
}

interface ToldTime {
  readonly passage: Passage
  readonly occupation: Occupation
  readonly minutes: number
}

/** Of a range the longer time, where the whole leaves room for that: nobody wants to be late. */
function lengthsOf(times: readonly TimeInStep[], totalMinutes = Number.POSITIVE_INFINITY) {
  const longest = times.map(({duration}) => duration.highMinutes)
  return sumOf(longest) <= totalMinutes ? longest : times.map(({duration}) => duration.lowMinutes)
}

/** Steps that open with what runs beside the step before: all that they tell begins with that. */
function besideSteps(recipe: Recipe): ReadonlyMap<Passage, readonly ToldTime[]> {
  const steps = new Map<Passage, readonly ToldTime[]>()
  for (const time of timesBeside(recipe)) {
    const {passage, sentence, duration} = time
    if (!passage.text.trimStart().startsWith(sentence) || !opensBeside.test(sentence)) continue
    const told = {passage, occupation: occupationOf(time), minutes: duration.highMinutes}
    steps.set(passage, [...(steps.get(passage) ?? []), told])
  }
  return steps
}

const opensBeside = /^(?:meanwhile|in the meantime|at the same time|while|whilst|as)\b/i

type Rest = Omit<Timetable, 'steps' | 'totalMinutes'>

/** What the recipe's own times leave beside those of the steps that follow one another. */
function restOf({handsOnMinutes, totalMinutes}: Recipe, told: readonly ToldTime[]): Rest {
  const worked = sumOf(told.filter(({occupation}) => occupation === 'work').map(minutesOf))
  const all = sumOf(told.map(minutesOf))
  const room = totalMinutes && totalMinutes.value - all
  const open = handsOnMinutes ? Math.max(0, handsOnMinutes.value - worked) : Math.max(0, room ?? 0)
  const sharedWorkMinutes = room === undefined ? open : Math.min(open, Math.max(0, room))
  return {
    sharedWorkMinutes,
    gapMinutes: Math.max(0, (room ?? 0) - sharedWorkMinutes),
    workInWaitsMinutes: open - sharedWorkMinutes,
    beyondMinutes: Math.max(0, -(room ?? 0)),
    isOpen: !handsOnMinutes && !totalMinutes,
  }
}

interface Plan {
  readonly told: readonly ToldTime[]
  readonly beside: ReadonlyMap<Passage, readonly ToldTime[]>
  /** Minutes for each of the steps that follow one another. */
  readonly work: readonly number[]
  readonly gaps: readonly number[]
}

function laidOut(steps: readonly Passage[], {told, beside, work, gaps}: Plan) {
  let clock = 0
  let besideFrom = 0
  let taker = 0
  const timed = steps.map((passage): TimedStep => {
    const own = told.filter((time) => time.passage === passage)
    const besideTimes = beside.get(passage)
    if (besideTimes) {
      const step = timedStep(passage, [...besideTimes, ...own], besideFrom)
      clock = Math.max(clock, step.toMinutes)
      return {...step, isBeside: true}
    }
    const shared = {passage, occupation: 'work' as const, minutes: work[taker] ?? 0}
    const step = timedStep(passage, [shared, ...own], clock)
    const waiting = step.stretches.findLast(({occupation}) => occupation === 'wait')
    besideFrom = waiting?.fromMinutes ?? clock
    clock = step.toMinutes + (gaps[taker] ?? 0)
    taker++
    return {...step, isBeside: false}
  })
  return {steps: timed, totalMinutes: clock}
}

function timedStep(passage: Passage, times: readonly ToldTime[], fromMinutes: number) {
  const stretches = inOrder(times, fromMinutes)
  return {passage, fromMinutes, stretches, toMinutes: stretches.at(-1)?.toMinutes ?? fromMinutes}
}

/** Parts end to end; neighbours of one kind are one stretch. */
function inOrder(parts: readonly ToldTime[], fromMinutes: number): readonly Stretch[] {
  const stretches: Stretch[] = []
  let clock = fromMinutes
  for (const {occupation, minutes} of parts) {
    if (minutes <= 0) continue
    const last = stretches.at(-1)
    const isSame = last?.occupation === occupation
    if (last && isSame) stretches.splice(-1, 1, {...last, toMinutes: clock + minutes})
    else stretches.push({occupation, fromMinutes: clock, toMinutes: clock + minutes})
    clock += minutes
  }
  return stretches
}

/** Whole minutes, the odd ones first: work begins with washing and cutting. */
function evenly(minutes: number, among: number): readonly number[] {
  const whole = Math.round(minutes)
  return Array.from(
    {length: among},
    (_, index) => Math.floor(whole / among) + (index < whole % among ? 1 : 0),
  )
}

function minutesOf({minutes}: ToldTime): number {
  return minutes
}

function sumOf(numbers: readonly number[]): number {
  return numbers.reduce((sum, one) => sum + one, 0)
}
