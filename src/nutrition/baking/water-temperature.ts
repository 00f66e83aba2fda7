/** Temperatures of what goes into a dough, all °C or all °F. */
export interface DoughTemperatures {
  readonly desired: number
  readonly room: number
  readonly flour: number
  readonly preferment?: number
  /** What mixing adds, a difference of the same scale: from the author's own mixer. */
  readonly friction: number
}

/**
 * Temperature the water must have for a dough to come out as desired: with a straight dough 3 ×
 * desired − room − flour − friction, with a preferment 4 × desired less its temperature too. Taught
 * in bakery schools; common practice, no published standard.
 */
export function waterTemperature(temperatures: DoughTemperatures): number {
  const {desired, room, flour, preferment, friction} = temperatures
  const others = preferment === undefined ? [room, flour] : [room, flour, preferment]
  const sum = others.reduce((total, temperature) => total + temperature, 0)
  return (others.length + 1) * desired - sum - friction
}

/** What mixing added, from a dough that was mixed: the same sum turned round. */
export function frictionFactor(
  mixed: Omit<DoughTemperatures, 'friction' | 'desired'> & {
    readonly dough: number
    readonly water: number
  },
): number {
  const {dough, water, ...others} = mixed
  return waterTemperature({...others, desired: dough, friction: 0}) - water
}
