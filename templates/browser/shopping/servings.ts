import type {Wanted} from '../../../src/shopping/shopping-list.ts'

/** The fields for servings: what they say, and making them say something else. */
export interface Servings {
  readonly wanted: () => readonly Wanted[]
  readonly ask: (wanted: readonly Wanted[]) => void
}

/** A field for each recipe, as the page has them. */
export function fieldsOnPage(chooser: HTMLElement, changed: () => void): Servings {
  const fields = [...chooser.querySelectorAll<HTMLInputElement>('input[data-recipe]')]
  for (const field of fields) field.addEventListener('input', changed)
  return {
    wanted: () =>
      fields
        .map((field) => ({slug: field.dataset.recipe ?? '', servings: Number(field.value)}))
        .filter(({servings}) => servings > 0),
    ask(wanted) {
      for (const field of fields) field.value = String(servingsOf(field, wanted))
    },
  }
}

export function servingsOf({dataset}: HTMLElement, wanted: readonly Wanted[]): number {
  return wanted
    .filter(({slug}) => slug === dataset.recipe)
    .reduce((sum, {servings}) => sum + servings, 0)
}
