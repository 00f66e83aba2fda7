/** How an energy is arrived at: the sum of the foods' own, or worked out from macros by a law. */
export const energyMethods = ['foods', 'general', 'digestible', 'eu'] as const

export type EnergyMethod = (typeof energyMethods)[number]
