import {type TimedStep, type Timetable, timetable} from '../../src/check/method/timetable.ts'
import type {Occupation} from '../../src/check/method/wait-or-work.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {recipePath, relativeHref} from '../addresses.ts'
import type {Part} from '../part.ts'
import type {Site} from '../site.ts'
import type {Words} from '../words/en.ts'
import {minutesText} from './time-text.ts'
import {type DrawnTime, drawnTime, isBroken, timeBars} from './timetable-bars.ts'

/**
 * When each step begins, and when the hands are free. Counted from the start; a script makes clock
 * times of what has `data-at`. Undefined for what never waits.
 */
export function timetablePart(site: Site, computed: Computed, path: string): Part {
  const {words} = site
  const table = timetable(computed.recipe)
  if (table === undefined) return undefined
  const text = words.timetable
  const drawn = drawnTime(table)
  return (
    <section aria-labelledby="part-timetable">
      <h2 id="part-timetable">{text.title}</h2>
      <div class="row" id="clock" hidden>
        {clockField(text.start)}
        {clockField(text.readyBy)}
        <p role="status" />
      </div>
      <table class="timetable">
        <thead>
          <tr>
            <th scope="col" class="number">
              {text.fromStart}
            </th>
            <th scope="col">{text.step}</th>
            <th scope="col" class="number">
              {text.handsOn}
            </th>
            <th scope="col" class="number">
              {text.waiting}
            </th>
          </tr>
        </thead>
        <tbody>{table.steps.map((step, index) => stepRow(step, index + 1, {drawn, words}))}</tbody>
        <tfoot>
          <tr>
            <td data-at={whole(table.totalMinutes)}>{fromStart(table.totalMinutes)}</td>
            <th scope="row">{text.ready}</th>
            {sumCell(table, 'work', words)}
            {sumCell(table, 'wait', words)}
          </tr>
        </tfoot>
      </table>
      <p class="rest">{assumptions(table, words).join(' ')}</p>
      {madeAhead(site, computed, path)}
    </section>
  )
}

function clockField(label: string): Part {
  return (
    <label>
      {label}
      <input type="time" />
    </label>
  )
}

interface RowContext {
  readonly drawn: DrawnTime
  readonly words: Words
}

function stepRow(step: TimedStep, number: number, {drawn, words}: RowContext): Part {
  const waits = step.stretches.filter(({occupation}) => occupation === 'wait')
  return (
    <tr>
      <td data-at={whole(step.fromMinutes)}>{fromStart(step.fromMinutes)}</td>
      <th scope="row">
        {`${number}. ${opening(step.passage.text)}`}
        {timeBars(step.stretches, drawn)}
      </th>
      <td>{minutesOrNothing(minutesOf([step], 'work'), words)}</td>
      <td>
        {minutesOrNothing(minutesOf([step], 'wait'), words)}
        {waits.map(({fromMinutes, toMinutes}) => (
          <small data-at={whole(fromMinutes)} data-to={whole(toMinutes)}>
            {`${fromStart(fromMinutes)}–${fromStart(toMinutes)}`}
          </small>
        ))}
      </td>
    </tr>
  )
}

function sumCell({steps}: Timetable, occupation: Occupation, words: Words): Part {
  return <td>{minutesOrNothing(minutesOf(steps, occupation), words)}</td>
}

function minutesOf(steps: readonly TimedStep[], of: Occupation): number {
  return steps
    .flatMap(({stretches}) => stretches)
    .filter(({occupation}) => occupation === of)
    .reduce((sum, {fromMinutes, toMinutes}) => sum + toMinutes - fromMinutes, 0)
}

function minutesOrNothing(minutes: number, words: Words): string {
  return minutes === 0 ? '' : minutesText(minutes, words)
}

/** `1:05`, hours and minutes since the start. */
function fromStart(minutes: number): string {
  const all = Math.round(minutes)
  return `${Math.floor(all / 60)}:${String(all % 60).padStart(2, '0')}`
}

function whole(minutes: number): string {
  return String(Math.round(minutes))
}

const longestOpening = 48

/** What a step begins with: enough to tell it by. */
function opening(text: string): string {
  const [clause = ''] = text
    .trim()
    .replaceAll(/\s+/g, ' ')
    .split(/(?<=\p{L}{3}|°\p{L})[.,;:](?=\s|$)/u)
  if (clause.length <= longestOpening) return clause
  return `${clause.slice(0, longestOpening).replace(/\s+\S*$/, '')} …`
}

/** What the table takes for granted, said below it. */
function assumptions(table: Timetable, words: Words): readonly string[] {
  const text = words.timetable
  const {sharedWorkMinutes, gapMinutes, workInWaitsMinutes, beyondMinutes, isOpen} = table
  const told = (minutes: number, say: (time: string) => string) =>
    minutes > 0 ? [say(minutesText(minutes, words))] : []
  return [
    text.legend,
    ...(table.steps.some(({stretches}) => stretches.some(isBroken)) ? [text.broken] : []),
    text.inTurn,
    ...told(sharedWorkMinutes, text.shared),
    ...told(gapMinutes, text.gaps),
    ...told(workInWaitsMinutes, text.inWaits),
    ...told(beyondMinutes, text.beyond),
    ...(isOpen ? [text.open] : []),
  ]
}

/** Components take time of their own, on another day or before. */
function madeAhead({words}: Site, {lines}: Computed, path: string): Part {
  const recipes = new Set(
    lines.flatMap(({ingredient}) => (ingredient.kind === 'component' ? [ingredient.recipe] : [])),
  )
  if (recipes.size === 0) return undefined
  return (
    <p class="rest">
      {`${words.timetable.ahead}: `}
      {[...recipes].map(({slug, title, totalMinutes}, index) => (
        <>
          {index > 0 ? ', ' : ''}
          <a href={relativeHref(path, recipePath(slug))}>{title.value}</a>
          {totalMinutes ? ` (${minutesText(totalMinutes.value, words)})` : ''}
        </>
      ))}
      .
    </p>
  )
}
