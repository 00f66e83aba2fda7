import type {Pan} from '../../src/cookbook/recipe.ts'
import {panScale} from '../../src/nutrition/baking/pan-size.ts'
import {one} from './page/query.ts'

/** How much to make for a tin of any size; only recipes with a tin of their own take this. */

const form = one('#cooking-tin')
const servings = one<HTMLInputElement>('#cooking-servings')

if (form && servings) start(form, servings)

function start(form: HTMLElement, servings: HTMLInputElement): void {
  const shape = form.querySelector('select')
  const lengths = [...form.querySelectorAll('input')]
  if (!shape) return
  const written = [...shape.options].findIndex(({defaultSelected}) => defaultSelected)
  const own = panOf(
    written,
    lengths.map(({defaultValue}) => defaultValue),
  )

  /** Shows the recipe's own tin, or none where the amounts are for no tin that anybody typed. */
  const show = () => {
    const isOwn = servings.value === servings.defaultValue
    if (isOwn) shape.selectedIndex = written
    for (const length of lengths) length.value = isOwn ? length.defaultValue : ''
  }

  form.addEventListener('input', () => {
    const typed = panOf(
      shape.selectedIndex,
      lengths.map(({value}) => value),
    )
    const {byArea, byVolume = byArea} = panScale(own, typed)
    if (!(byVolume > 0)) return
    // A tin is never measured finer than three digits of what it holds.
    const batches = Number(byVolume.toPrecision(3))
    servings.value = String(Number((batches * Number(servings.defaultValue)).toFixed(3)))
    servings.dispatchEvent(new Event('input', {bubbles: true}))
  })
  // Whatever else sets the amounts leaves the tin behind.
  document.addEventListener('input', ({target, isTrusted}) => {
    if (isTrusted && target instanceof Node && !form.contains(target)) show()
  })
  one('#as-written')?.addEventListener('click', show)
  show()
}

/** A tin in a unit of its own: only what two of them hold beside each other is asked. */
function panOf(shape: number, [across, second, depth]: readonly string[]): Pan {
  return {
    text: '',
    shape: (['round', 'square', 'rectangle', 'ring'] as const)[shape] ?? 'round',
    acrossMillimetres: Number(across),
    secondMillimetres: Number(second),
    ...(depth && {depthMillimetres: Number(depth)}),
  }
}
