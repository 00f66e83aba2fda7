import {cautionsOf} from '../../src/check/safety/cautions.ts'
import {judge, type Verdict} from '../../src/check/verdict.ts'
import {cookbookPath, figuresPath} from '../addresses.ts'
import {openProblems, verdictLegend} from '../figures.tsx'
import {foodOrigin} from '../foods.tsx'
import type {Part} from '../part.ts'
import {foodsInUse} from '../parts/foods-in-use.ts'
import {inDocument} from '../parts/in-document.ts'
import {verdictMark} from '../parts/verdict-mark.ts'
import type {Site} from '../site.ts'
import type {Book} from './book.ts'

/** How the numbers were checked: what was compared, what the verdicts mean, what was left open. */
export function checked({site, places}: Book, id: string): Part {
  const {words} = site
  return (
    <>
      <p>{words.figuresPage.intro}</p>
      {tally(site)}
      {inDocument(
        <>
          {verdictLegend(site)}
          {openProblems(site)}
        </>,
        {
          from: figuresPath,
          to: cookbookPath,
          id,
          deeper: 1,
          places,
        },
      )}
    </>
  )
}

function tally({computed, cookbook, words}: Site): Part {
  const counts = new Map<Verdict, number>()
  let recipes = 0
  for (const one of computed.values()) {
    if (!one.recipe.stated) continue
    recipes++
    for (const {verdict} of judge(one.recipe.stated, one, cookbook.settings)) {
      counts.set(verdict, (counts.get(verdict) ?? 0) + 1)
    }
  }
  const all = [...counts.values()].reduce((sum, count) => sum + count, 0)
  if (all === 0) return undefined
  return (
    <>
      <p>{words.book.tally(all, recipes)}</p>
      <ul class="tally">
        {[...counts].map(([verdict, count]) => (
          <li>
            {verdictMark(verdict, words)}: {count}
          </li>
        ))}
      </ul>
    </>
  )
}

/** Where figures and cautions come from. */
export function sources({site}: Book): Part {
  const {words} = site
  const cautions = new Set(
    [...site.computed.values()].flatMap((one) => cautionsOf(one).map(({source}) => source)),
  )
  return (
    <>
      <p>{words.foodsPage.intro}</p>
      <h3>{words.book.foodSources}</h3>
      <ul class="index long">
        {foodsInUse(site.computed.values()).map(({food}) => (
          <li>
            {food.name}: {foodOrigin(food, words)}
          </li>
        ))}
      </ul>
      {cautions.size === 0 ? undefined : (
        <>
          <h3>{words.book.cautionSources}</h3>
          <ul>
            {[...cautions].map((source) => (
              <li>{source}</li>
            ))}
          </ul>
          <p>{words.safety.localRulesFirst}</p>
        </>
      )}
      <p>{words.footer.caution}</p>
    </>
  )
}
