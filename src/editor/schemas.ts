import {ownFoodsReader} from '../cookbook/own-foods.ts'
import {planReader} from '../cookbook/read-plan.ts'
import {textPageReader} from '../cookbook/read-text-page.ts'
import {recipeReader} from '../cookbook/recipe-fields.ts'
import {settingsReader} from '../cookbook/settings-fields.ts'
import type {JsonSchema} from '../cookbook/yaml/json-schema.ts'

/** The kinds of file that have a schema, by its name in the package: `schemas/recipe.json`. */
export type SchemaName = 'recipe' | 'plan' | 'page' | 'foods' | 'cookbook'

interface SchemaDocument extends JsonSchema {
  readonly $schema: string
  readonly title: string
}

/**
 * The JSON Schema (draft 7) of each kind of file, from the definitions that read it. It refuses no
 * text that the reader takes; whether `38 g` is a readable figure is for the reader alone.
 */
export const schemas: Readonly<Record<SchemaName, SchemaDocument>> = {
  recipe: document(
    'Front matter of a recipe',
    // Which cup is meant changes how an amount is read, and nothing in the schema.
    recipeReader({cups: 'metric', measures: new Set()}).schema,
  ),
  plan: document('Front matter of a plan', planReader.schema),
  page: document('Front matter of a page', textPageReader.schema),
  foods: document('foods.yaml', ownFoodsReader.schema),
  cookbook: document('cookbook.yaml', settingsReader.schema),
}

function document(title: string, schema: JsonSchema): SchemaDocument {
  return {$schema: 'http://json-schema.org/draft-07/schema#', title, ...schema}
}

/**
 * The schema that the front matter or the whole of a file follows.
 * @param file relative to the cookbook folder, with `/`
 */
export function schemaOf(file: string): JsonSchema | undefined {
  if (file === 'foods.yaml') return schemas.foods
  if (file === 'cookbook.yaml') return schemas.cookbook
  if (!file.endsWith('.md')) return undefined
  if (file.startsWith('recipes/')) return schemas.recipe
  if (file.startsWith('plans/')) return schemas.plan
  return file.startsWith('pages/') ? schemas.page : undefined
}
