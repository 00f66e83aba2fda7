import type {CookingData} from '../../parts/cooking-data.ts'
import {fill} from '../../words/fill.ts'
import {element} from '../page/element.ts'

/** A box to tick for what is optional, and for each alternative of a line. */
export interface Switches {
  /** Sets the boxes to what is chosen. */
  show(choices: readonly number[]): void
}

/** @param choose is told the line and its choice: 0 as written, 1 its first alternative, −1 none */
export function addSwitches(
  data: CookingData,
  choose: (line: number, choice: number) => void,
): Switches {
  const texts = data.choosing?.words
  const boxes: {box: HTMLInputElement; line: number; choice: number}[] = []
  for (const [index, {anchor, choices}] of data.lines.entries()) {
    const row = document.getElementById(anchor)
    const isOptional = data.recipe.lines[index]?.isOptional === true
    const add = (place: Element | null | undefined, choice: number, text: string) => {
      const box = element('input', '')
      box.type = 'checkbox'
      box.addEventListener('change', () => {
        choose(index, box.checked ? choice : isOptional ? -1 : 0)
      })
      const name = choices[choice]?.name ?? ''
      place?.append(element('label', 'switch', box, ` ${fill(text, {name})}`))
      boxes.push({box, line: index, choice})
    }
    if (texts === undefined) continue
    if (isOptional) add(row?.querySelector('.what'), 0, texts.putIn)
    for (const [at, place] of [...(row?.querySelectorAll('.instead') ?? [])].entries()) {
      add(place, at + 1, texts.takeInstead)
    }
  }
  return {
    show(choices) {
      for (const {box, line, choice} of boxes) box.checked = choices[line] === choice
    },
  }
}

/** What was chosen, in words; empty where the recipe is cooked as written. */
export function choiceTexts(data: CookingData, chosen: readonly number[]): readonly string[] {
  const texts = data.choosing?.words
  return data.lines.flatMap(({choices}, index) => {
    const choice = chosen[index] ?? 0
    const [written] = choices
    const taken = choices[choice]
    if (!written || !taken || !texts) return []
    if (choice > 0) {
      return [fill(texts.insteadOf, {name: taken.name, written: written.name})]
    }
    const isOptional = data.recipe.lines[index]?.isOptional === true
    return isOptional ? [fill(texts.with, {name: taken.name})] : []
  })
}
