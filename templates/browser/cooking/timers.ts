import type {CookingData} from '../../parts/cooking-data.ts'
import {fill} from '../../words/fill.ts'
import {element} from '../page/element.ts'
import {keep, kept} from '../page/kept.ts'
import {all} from '../page/query.ts'
import {ring} from './ring.ts'

interface Timer {
  readonly label: string
  /** Milliseconds since 1970. */
  readonly endsAt: number
}

/** Makes every time of a step start a timer; those that run stand at the foot of the window. */
export function addTimers({slug, words}: CookingData): void {
  const name = `scalepan timers ${slug}`
  const tray = element('section', 'tray')
  tray.ariaLabel = words.timers
  const list = element('ul', '')
  const said = element('p', 'said')
  said.role = 'status'
  tray.append(list, said)
  let timers = timersFrom(kept(name))
  let rung = new Set(timers.filter(isOver))

  function save(next: readonly Timer[]): void {
    timers = next
    rung = new Set([...rung].filter((timer) => timers.includes(timer)))
    keep(name, timers)
    draw()
  }

  function draw(): void {
    tray.hidden = timers.length === 0
    list.replaceChildren(
      ...timers.map((timer) => {
        const stop = element('button', '', words.stopTimer)
        stop.type = 'button'
        stop.ariaLabel = `${words.stopTimer}: ${timer.label}`
        stop.addEventListener('click', () => save(timers.filter((other) => other !== timer)))
        return element('li', '', element('strong', 'left'), ` ${timer.label} `, stop)
      }),
    )
    tick()
  }

  function tick(): void {
    for (const [index, left] of [...list.querySelectorAll('.left')].entries()) {
      const timer = timers[index]
      if (timer === undefined) continue
      left.textContent = isOver(timer) ? words.timerEnded : clockText(timer.endsAt - Date.now())
      if (isOver(timer) && !rung.has(timer)) {
        rung.add(timer)
        said.textContent = `${words.timerEnded}: ${timer.label}`
        ring()
      }
    }
  }

  for (const [index, step] of all('.method > ol > li').entries()) {
    for (const time of step.querySelectorAll<HTMLElement>('.time')) {
      const text = time.textContent ?? ''
      const start = element('button', 'time', text)
      start.type = 'button'
      start.ariaLabel = fill(words.startTimer, {time: text})
      start.addEventListener('click', () => {
        const endsAt = Date.now() + Number(time.dataset.minutes) * 60_000
        const label = fill(words.timerOf, {time: text, step: index + 1})
        save([...timers, {label, endsAt}])
        said.textContent = label
      })
      time.replaceWith(start)
    }
  }
  document.body.append(tray)
  draw()
  setInterval(tick, 500)
}

function isOver({endsAt}: Timer): boolean {
  return endsAt <= Date.now()
}

function timersFrom(value: unknown): readonly Timer[] {
  if (!Array.isArray(value)) return []
  return value.filter((one) => typeof one?.label === 'string' && typeof one.endsAt === 'number')
}

/** `44:05`, `1:02:30`. */
function clockText(milliseconds: number): string {
  const seconds = Math.ceil(milliseconds / 1000)
  const [hours, minutes] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60]
  const two = (number: number) => String(number).padStart(2, '0')
  const end = `${two(seconds % 60)}`
  return hours > 0 ? `${hours}:${two(minutes)}:${end}` : `${minutes}:${end}`
}
