import {h} from 'hastscript'
import type {ShoppingList} from '../../src/shopping/shopping-list.ts'
import type {Part} from '../part.ts'
import type {Site} from '../site.ts'
import {type ListRow, type ListWords, listText} from './shopping-text.ts'

/** The texts that lists need, from the catalogue. */
export function listWords({words, cookbook}: Site): ListWords {
  return {
    ...words.list,
    decimal: words.decimal,
    aisle: words.aisle,
    currency: cookbook.settings.currency,
  }
}

/**
 * A list as it stands on paper: what to make first, then what to buy, aisle by aisle.
 * @param level of the aisles' headings, one below the heading the list stands under
 */
export function shoppingListPart(list: ShoppingList, site: Site, level: 'h3' | 'h4'): Part {
  const {groups, make, cost} = listText(list, listWords(site))
  return (
    <>
      {cost === undefined ? undefined : <p>{cost}</p>}
      <div class="shopping">
        {make.length > 0 ? group(level, site.words.list.makeFirst, make) : undefined}
        {groups.map(({heading, rows}) => group(level, heading, rows))}
      </div>
    </>
  )
}

function group(level: 'h3' | 'h4', heading: string, rows: readonly ListRow[]): Part {
  return (
    <section>
      {h(level, heading)}
      <ul class="ledger">
        {rows.map(({amount, name, notes}) => (
          <li>
            <span class="weight">{amount}</span>{' '}
            <span class="what">
              {name}
              {notes.length > 0 ? <span class="note"> {notes.join('; ')}</span> : undefined}
            </span>
          </li>
        ))}
      </ul>
    </section>
  )
}
