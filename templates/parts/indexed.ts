/**
 * Lists of names that many things share, with each name written once: 10,000 recipes use a few
 * hundred words, tags and allergens.
 */
export interface Indexed {
  readonly names: readonly string[]
  /** For each thing the places of its names, each once. */
  readonly of: readonly (readonly number[])[]
}

export function indexed(lists: readonly Iterable<string>[]): Indexed {
  const places = new Map<string, number>()
  const placeOf = (name: string): number => {
    const place = places.get(name) ?? places.size
    places.set(name, place)
    return place
  }
  const of = lists.map((names) => [...new Set(names)].map(placeOf))
  return {names: [...places.keys()], of}
}

/** The names of one thing. */
export function namesOf({names, of}: Indexed, index: number): readonly string[] {
  return (of[index] ?? []).flatMap((place) => names[place] ?? [])
}
