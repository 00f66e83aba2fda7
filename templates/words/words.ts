import {de} from './de.ts'
import {en, type Words} from './en.ts'

/**
 * The catalogue for a language.
 * @param language BCP 47; English stands in where there is no catalogue
 */
export function wordsFor(language: string): Words {
  const [primary = ''] = language.toLowerCase().split('-')
  return catalogues.get(primary) ?? en
}

const catalogues: ReadonlyMap<string, Words> = new Map([
  ['en', en],
  ['de', de],
])
