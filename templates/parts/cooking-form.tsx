import {otherTins} from '../../src/nutrition/baking/usual-tins.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import type {Part} from '../part.ts'
import type {Site} from '../site.ts'
import {cookingData} from './cooking-data.ts'
import {jsonScript} from './json-script.ts'

/** How much to make, by servings, by what there is, by the tin. Hidden until its script has come. */
export function cookingForm(site: Site, computed: Computed): Part {
  const {cooking} = site.words
  if (computed.lines.length === 0) return undefined
  return (
    <div id="cooking" hidden>
      {jsonScript(cookingData(site, computed), 'application/json', 'cooking-data')}
      <fieldset class="row">
        <legend>{cooking.title}</legend>
        {batchField(site, computed)}
        {haveField(site)}
        {tinField(site, computed)}
        <p>
          <button type="button" id="as-written">
            {cooking.again}
          </button>
        </p>
      </fieldset>
      <p id="cooking-status" role="status" />
      <p class="row">
        <button type="button" id="copy-text">
          {cooking.script.copy}
        </button>
        <label id="awake" hidden>
          <input type="checkbox" /> {cooking.awake}
        </label>
      </p>
    </div>
  )
}

function batchField({words: {cooking}}: Site, {recipe}: Computed): Part {
  return (
    <p>
      <label for="cooking-servings">{recipe.serves ? cooking.servings : cooking.batches}</label>
      <input
        type="number"
        id="cooking-servings"
        min="0"
        step="any"
        inputMode="decimal"
        value={`${recipe.serves?.value ?? 1}`}
      />
    </p>
  )
}

/** The ingredients to choose from are known to the script. */
function haveField({words: {cooking}}: Site): Part {
  return (
    <>
      <p>
        <label for="cooking-have">{cooking.have}</label>
        <input type="number" id="cooking-have" min="0" step="any" inputMode="decimal" />
      </p>
      <p>
        <label for="cooking-of">{cooking.haveOf}</label>
        <select id="cooking-of" />
      </p>
    </>
  )
}

/** A tin is filled as high as its own, where both depths are known; else with as deep a batter. */
function tinField({words: {cooking}}: Site, {recipe}: Computed): Part {
  const pan = recipe.pan?.value
  if (pan === undefined) return undefined
  return (
    <p>
      <label for="cooking-tin">{cooking.tin}</label>
      <select id="cooking-tin">
        <option value="1">{pan.text}</option>
        {otherTins(pan).map(({pan: {text}, byArea, byVolume = byArea}) => (
          <option value={byVolume.toPrecision(4)}>{text}</option>
        ))}
      </select>
    </p>
  )
}
