import type {Cookbook} from '../../cookbook/cookbook.ts'
import type {LabelRules} from '../../food/label-rules.ts'
import type {Computed} from '../../nutrition/computed.ts'
import {type Sides, sidesOf} from '../comparison/sides.ts'
import {type DishKind, dishKind} from './dish-kind.ts'

/** A dish as laws on claims see it. */
export interface Dish {
  readonly computed: Computed
  readonly rules: LabelRules
  readonly kind: DishKind
  /** Whether limits for 100 ml hold instead of those for 100 g. */
  readonly isDrink: boolean
  /** What a relative claim is relative to. */
  readonly beside?: Sides
}

/** Tags that make a dish a drink; 100 ml of it are then taken as 100 g (as water). */
const drinkTags: ReadonlySet<string> = new Set(['drink', 'drinks'])

export function dishOf(
  computed: Computed,
  cookbook: Cookbook,
  all: ReadonlyMap<string, Computed>,
): Dish {
  const {comparison, tags} = computed.recipe
  const beside = comparison && sidesOf(computed, comparison, {cookbook, all}).sides
  return {
    computed,
    rules: cookbook.settings.rules,
    kind: dishKind(computed),
    isDrink: tags.some(({value}) => drinkTags.has(value.toLowerCase())),
    ...(beside && {beside}),
  }
}
