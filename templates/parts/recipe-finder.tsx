import {dietNames} from '../../src/check/absences/diet.ts'
import {allergenGroups} from '../../src/food/allergens.ts'
import {findingDataPath} from '../addresses.ts'
import type {Part} from '../part.ts'
import type {Site} from '../site.ts'
import {hasCosts} from './dish-columns.ts'
import type {FindingData} from './finding-data.ts'
import {jsonScript} from './json-script.ts'

/**
 * Fields that narrow the table of recipes. Hidden until the script that reads them has come.
 * @param isWhole whether the table stands on the page with all its rows, and so do the data
 */
export function recipeFinder(site: Site, data: FindingData, isWhole: boolean): Part {
  const {finding} = site.words
  return (
    <search
      id="finder"
      aria-label={finding.label}
      hidden
      data-shown={finding.shown}
      data-some={finding.some}
      data-fetching={finding.fetching}
      data-failed={finding.failed}
      data-source={isWhole ? undefined : findingDataPath}
    >
      {isWhole ? jsonScript(data, 'application/json', 'finding-data') : undefined}
      <div class="row">
        <p>
          <label for="find-words">{finding.words}</label>
          <input type="search" id="find-words" name="find" autoComplete="off" />
        </p>
        {limitField('most', 'energy', finding.mostEnergy)}
        {limitField('least', 'protein', finding.leastProtein)}
        {limitField('least', 'density', finding.leastDensity)}
        {limitField('most', 'minutes', finding.mostMinutes)}
        {hasCosts(site)
          ? limitField('most', 'cost', finding.mostCost(site.cookbook.settings.currency))
          : undefined}
        {choices(site, data)}
        <p>
          <button type="button">{finding.clear}</button>
        </p>
      </div>
      <p class="note" id="find-without-note" hidden>
        {finding.withoutNote}
      </p>
      <p id="find-status" role="status" />
    </search>
  )
}

/** @param figure key of the column the limit is for, which is also its name in the address */
function limitField(limit: 'most' | 'least', figure: string, label: string): Part {
  return (
    <p>
      <label for={`find-${figure}`}>{label}</label>
      <input
        type="number"
        id={`find-${figure}`}
        name={figure}
        data-limit={limit}
        data-figure={figure}
        min="0"
        step="any"
        inputMode="decimal"
      />
    </p>
  )
}

/** Only what some dish has can be chosen. */
function choices({words, cookbook}: Site, {tags, diets, allergens}: FindingData): Part {
  const {finding} = words
  const groups = allergenGroups[cookbook.settings.rules]
    .filter(({members}) => members.some((member) => allergens.names.includes(member)))
    .map((group) => [group.members.join(','), words.allergenGroup(group)] as const)
  return (
    <>
      {choice('tag', finding.tag, finding.any, [...tags.names].sort().map(asItself))}
      {choice(
        'diet',
        finding.diet,
        finding.any,
        dietNames
          .filter((name) => diets.names.includes(name))
          .map((name) => [name, words.safety.promise(name)] as const),
      )}
      {choice('without', finding.without, finding.anyAllergen, groups)}
    </>
  )
}

function asItself(value: string): readonly [string, string] {
  return [value, value]
}

function choice(
  name: string,
  label: string,
  none: string,
  options: readonly (readonly [value: string, text: string])[],
): Part {
  if (options.length === 0) return undefined
  return (
    <p>
      <label for={`find-${name}`}>{label}</label>
      <select id={`find-${name}`} name={name}>
        <option value="">{none}</option>
        {options.map(([value, text]) => (
          <option value={value}>{text}</option>
        ))}
      </select>
    </p>
  )
}
