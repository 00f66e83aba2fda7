import type {Origin} from './food.ts'

/** Meat of four-legged animals, which keeps pink longer than poultry may. */
export const redMeats: ReadonlySet<Origin> = new Set(['beef', 'pork', 'lamb', 'veal', 'game'])

/** All that a butcher sells as meat. */
export const meats: ReadonlySet<Origin> = new Set([...redMeats, 'poultry'])

/** Fish and shellfish. */
export const seafood: ReadonlySet<Origin> = new Set(['fish', 'crustacean', 'mollusc'])
