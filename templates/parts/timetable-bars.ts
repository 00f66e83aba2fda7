import type {Element} from 'hast'
import {s} from 'hastscript'
import type {Stretch, Timetable} from '../../src/check/method/timetable.ts'
import {roundedText} from '../../src/units/format-figure.ts'

/** Longer waits are drawn as long as this, broken: a night would leave no room for the work. */
const longestDrawnMinutes = 180

/** Where a minute of the cooking lies on a bar, 0 to 1 of its width. */
export type DrawnTime = (minutes: number) => number

/** The width that each stretch gets, with long waits cut. */
export function drawnTime({steps, totalMinutes}: Timetable): DrawnTime {
  const cuts = steps
    .filter(({isBeside}) => !isBeside)
    .flatMap(({stretches}) => stretches.filter(isBroken))
  const drawn = (minutes: number) =>
    cuts.reduce((sum, {fromMinutes, toMinutes}) => {
      const within = Math.min(Math.max(minutes - fromMinutes, 0), toMinutes - fromMinutes)
      return sum - within * (1 - longestDrawnMinutes / (toMinutes - fromMinutes))
    }, minutes)
  const whole = drawn(totalMinutes)
  return (minutes) => drawn(minutes) / whole
}

/** A wait too long to be drawn whole. */
export function isBroken({occupation, fromMinutes, toMinutes}: Stretch): boolean {
  return occupation === 'wait' && toMinutes - fromMinutes > longestDrawnMinutes
}

/**
 * A step's place in the whole: blocks for work, lines for waiting, in one ink. The drawing repeats
 * the numbers beside it, so it is hidden from readers who listen.
 */
export function timeBars(stretches: readonly Stretch[], drawn: DrawnTime): Element {
  const percent = (minutes: number) => `${Number(roundedText(drawn(minutes) * 100, 1))}%`
  return s(
    'svg',
    {className: ['bars'], ariaHidden: 'true'},
    stretches.map((stretch) =>
      s('line', {
        x1: percent(stretch.fromMinutes),
        x2: percent(stretch.toMinutes),
        ...(stretch.occupation === 'wait' && {
          className: ['wait', ...(isBroken(stretch) ? ['broken'] : [])],
        }),
      }),
    ),
  )
}
