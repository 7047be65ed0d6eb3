/**
 * A reader of JSON Schema for tests, written from the standard (JSON Schema draft 2020-12, Core
 * and Validation) and not from the program: only the words that occur are known, any other throws.
 */
type Plain = Readonly<Record<string, unknown>>
const isPlain = (value: unknown): value is Plain =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** Words that say something to a person and nothing about validity. */
const SILENT = ['$schema', 'description', 'title', 'examples', 'default', 'properties']

export function fits(schema: unknown, value: unknown): boolean {
  if (typeof schema === 'boolean') return schema
  if (!isPlain(schema)) throw new Error(`json-schema: ${JSON.stringify(schema)} is no schema`)
  return (
    Object.entries(schema).every(
      ([word, rule]) => SILENT.includes(word) || obeys(word, rule, value, schema),
    ) && propertiesFit(schema, value)
  )
}

const list = (rule: unknown): readonly unknown[] => {
  if (!Array.isArray(rule)) throw new Error('json-schema: a list was expected')
  return rule
}

function obeys(word: string, rule: unknown, value: unknown, schema: Plain): boolean {
  switch (word) {
    case 'type':
      return (Array.isArray(rule) ? rule : [rule]).some((t) => isOfType(value, t))
    case 'const':
      return value === rule
    case 'enum':
      return list(rule).includes(value)
    case 'anyOf':
      return list(rule).some((s) => fits(s, value))
    case 'oneOf':
      return list(rule).filter((s) => fits(s, value)).length === 1
    case 'minimum':
      return typeof value !== 'number' || value >= Number(rule)
    case 'maximum':
      return typeof value !== 'number' || value <= Number(rule)
    case 'exclusiveMinimum':
      return typeof value !== 'number' || value > Number(rule)
    case 'minLength':
      return typeof value !== 'string' || [...value].length >= Number(rule)
    case 'maxLength':
      return typeof value !== 'string' || [...value].length <= Number(rule)
    case 'pattern':
      return typeof value !== 'string' || new RegExp(String(rule), 'u').test(value)
    case 'maxItems':
      return !Array.isArray(value) || value.length <= Number(rule)
    case 'minItems':
      return !Array.isArray(value) || value.length >= Number(rule)
    case 'prefixItems':
      return (
        !Array.isArray(value) || list(rule).every((s, i) => i >= value.length || fits(s, value[i]))
      )
    case 'items': {
      const from = Array.isArray(schema['prefixItems']) ? schema['prefixItems'].length : 0
      return !Array.isArray(value) || value.slice(from).every((item) => fits(rule, item))
    }
    case 'required':
      return !isPlain(value) || list(rule).every((key) => Object.hasOwn(value, String(key)))
    case 'propertyNames':
      return !isPlain(value) || Object.keys(value).every((key) => fits(rule, key))
    case 'additionalProperties': {
      const known = isPlain(schema['properties']) ? schema['properties'] : {}
      return (
        !isPlain(value) ||
        Object.entries(value).every(([key, v]) => Object.hasOwn(known, key) || fits(rule, v))
      )
    }
    default:
      throw new Error(`json-schema: "${word}" is not known here`)
  }
}

function propertiesFit({ properties }: Plain, value: unknown): boolean {
  if (!isPlain(properties) || !isPlain(value)) return true
  return Object.entries(properties).every(
    ([key, schema]) => !Object.hasOwn(value, key) || fits(schema, value[key]),
  )
}

function isOfType(value: unknown, type: unknown): boolean {
  switch (type) {
    case 'object':
      return isPlain(value)
    case 'array':
      return Array.isArray(value)
    case 'null':
      return value === null
    case 'integer':
      return Number.isInteger(value)
    default:
      return typeof value === type
  }
}
