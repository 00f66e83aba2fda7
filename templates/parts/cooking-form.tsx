import {lengthUnit} from '../../src/nutrition/baking/length-unit.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import type {Part} from '../part.ts'
import type {Site} from '../site.ts'
import {cookingData} from './cooking-data.ts'
import {jsonScript} from './json-script.ts'
import {lengthNumber} from './tin-text.ts'

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
        <p>
          <button type="button" id="as-written">
            {cooking.again}
          </button>
        </p>
      </fieldset>
      {tinFields(site, computed)}
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
    <label>
      {recipe.serves ? cooking.servings : cooking.batches}
      <input
        type="number"
        id="cooking-servings"
        min="0"
        step="any"
        inputMode="decimal"
        value={`${recipe.serves?.value ?? 1}`}
      />
    </label>
  )
}

/** The ingredients to choose from are known to the script. */
function haveField({words: {cooking}}: Site): Part {
  return (
    <>
      <label>
        {cooking.have}
        <input type="number" id="cooking-have" min="0" step="any" inputMode="decimal" />
      </label>
      <p>
        <label for="cooking-of">{cooking.haveOf}</label>
        <select id="cooking-of" />
      </p>
    </>
  )
}

/** A tin of any size: filled as high as the recipe's, where both depths are known. */
function tinFields({words: {cooking}}: Site, {recipe}: Computed): Part {
  if (recipe.pan === undefined) return undefined
  const own = recipe.pan.value
  const unit = lengthUnit(own)
  const {title, shape, shapes, across, second, depth} = cooking.tin
  const field = (label: string, millimetres: number | undefined) => (
    <label>
      {label}
      <input
        type="number"
        min="0"
        step="any"
        inputMode="decimal"
        value={millimetres && lengthNumber(millimetres, unit)}
      />
    </label>
  )
  return (
    <fieldset class="row" id="cooking-tin">
      <legend>{`${title}, ${unit}`}</legend>
      <label>
        {shape}
        <select>
          {(['round', 'square', 'rectangle', 'ring'] as const).map((one) => (
            <option selected={one === own.shape}>{shapes[one]}</option>
          ))}
        </select>
      </label>
      {field(across, own.acrossMillimetres)}
      {field(second, own.secondMillimetres)}
      {field(depth, own.depthMillimetres)}
    </fieldset>
  )
}
