import type {JsonSchema} from '../cookbook/yaml/json-schema.ts'

/**
 * What may stand behind a path of keys: several where a value has several forms. The elements of a
 * list stand in its place, for YAML in the writing has no index.
 */
export function schemasAt(schema: JsonSchema, path: readonly string[]): readonly JsonSchema[] {
  let reached = forms(schema)
  for (const key of path) reached = reached.flatMap((each) => behind(each, key))
  return reached
}

function behind({properties = {}, additionalProperties, propertyNames}: JsonSchema, key: string) {
  if (propertyNames?.not.enum.includes(key)) return []
  const known = Object.hasOwn(properties, key) ? properties[key] : undefined
  const schema = known ?? (additionalProperties || undefined)
  return schema ? forms(schema) : []
}

function forms(schema: JsonSchema): readonly JsonSchema[] {
  if (schema.anyOf) return schema.anyOf.flatMap(forms)
  return schema.items ? forms(schema.items) : [schema]
}
