/** The part of JSON Schema (draft 7) that field definitions speak, for completion in editors. */
export interface JsonSchema {
  readonly type?: JsonType | readonly JsonType[]
  readonly description?: string
  readonly enum?: readonly string[]
  readonly pattern?: string
  readonly examples?: readonly string[]
  readonly minimum?: number
  readonly exclusiveMinimum?: number
  readonly maximum?: number
  readonly properties?: Readonly<Record<string, JsonSchema>>
  readonly required?: readonly string[]
  readonly additionalProperties?: JsonSchema | false
  readonly minProperties?: number
  readonly propertyNames?: {readonly not: {readonly enum: readonly string[]}}
  readonly items?: JsonSchema
  readonly anyOf?: readonly JsonSchema[]
}

type JsonType = 'object' | 'array' | 'string' | 'number' | 'integer' | 'boolean'
