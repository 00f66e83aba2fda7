import type {Computed} from '../../src/nutrition/computed.ts'
import {relativeHref} from '../addresses.ts'
import type {Part} from '../part.ts'

/** Rows that a browser lays out without a wait; the project's choice. */
export const rowsOfPart = 200

/** A table by name that is spread over pages, as it would take a browser seconds to show it whole. */
export interface TablePart {
  /** From 1 up. */
  readonly number: number
  readonly recipes: readonly Computed[]
  readonly path: string
}

/**
 * Parts of a table, each on its page.
 * @param pathOf the page of a part
 */
export function tableParts(
  recipes: readonly Computed[],
  pathOf: (number: number) => string,
): readonly TablePart[] {
  const count = Math.ceil(recipes.length / rowsOfPart)
  return Array.from({length: count}, (_, index) => ({
    number: index + 1,
    recipes: recipes.slice(index * rowsOfPart, (index + 1) * rowsOfPart),
    path: pathOf(index + 1),
  }))
}

/** Links to every part by the first and last name in it; nothing where there is one part. */
export function partLinks(
  parts: readonly TablePart[],
  {from, label, id}: {readonly from: string; readonly label: string; readonly id?: string},
): Part {
  if (parts.length < 2) return undefined
  return (
    <nav aria-label={label} id={id}>
      <ul>
        {parts.map(({path, recipes}) => (
          <li>
            <a href={relativeHref(from, path)} aria-current={path === from ? 'page' : undefined}>
              {titleOf(recipes.at(0))} – {titleOf(recipes.at(-1))}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  )
}

function titleOf(computed: Computed | undefined): string {
  return computed?.recipe.title.value ?? ''
}
