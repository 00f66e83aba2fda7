import type {Order} from './order.ts'

/** The fields of the finder: what they ask for, and the address that says the same. */

export type Field = HTMLInputElement | HTMLSelectElement

/** What the fields say, before anybody knows the words of the cookbook. */
export interface Asked {
  readonly text: string
  readonly most: Readonly<Record<string, number>>
  readonly least: Readonly<Record<string, number>>
  readonly tag: string | undefined
  readonly diet: string | undefined
  readonly without: readonly string[]
}

export function askedIn(fields: readonly Field[]): Asked {
  const limits = (kind: string) =>
    Object.fromEntries(
      fields
        .filter(({dataset, value}) => dataset.limit === kind && value !== '')
        .map(({dataset, value}) => [dataset.figure, Number(value)]),
    )
  const value = (name: string) => fields.find((field) => field.name === name)?.value || undefined
  return {
    text: value('find') ?? '',
    most: limits('most'),
    least: limits('least'),
    tag: value('tag'),
    diet: value('diet'),
    // No allergen has a comma in its name.
    without: value('without')?.split(',') ?? [],
  }
}

/** The address with what is asked for behind its `#`; an address can be kept or handed on. */
export function addressFor(fields: readonly Field[], order: Order | undefined): string {
  const entries = fields.filter(({value}) => value !== '').map(({name, value}) => [name, value])
  if (order) entries.push([order.isDown ? 'down' : 'up', order.key])
  return entries.length === 0 ? location.pathname : `#${new URLSearchParams(entries)}`
}

/** Fills the fields from the address. @returns how it wants the table sorted */
export function readAddress(fields: readonly Field[], keys: readonly string[]): Order | undefined {
  const asked = new URLSearchParams(location.hash.slice(1))
  for (const field of fields) {
    const value = asked.get(field.name) ?? ''
    field.value = value
    // A list that has no such entry, or a number that is none, asks for nothing.
    if (field.value !== value) field.value = ''
  }
  const key = asked.get('down') ?? asked.get('up') ?? ''
  return keys.includes(key) && key !== '' ? {key, isDown: asked.has('down')} : undefined
}
