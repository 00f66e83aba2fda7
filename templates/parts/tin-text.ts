import type {Pan} from '../../src/cookbook/recipe.ts'
import {
  type LengthUnit,
  lengthUnit,
  millimetresPer,
} from '../../src/nutrition/baking/length-unit.ts'
import {withDecimal} from '../words/decimal.ts'
import type {Words} from '../words/en.ts'

/** A usual tin in the words of the page: `18 cm round, 7 cm deep`. */
export function tinText(pan: Pan, words: Words): string {
  const {baking} = words
  const {shape, acrossMillimetres: across, secondMillimetres: second = 0, depthMillimetres} = pan
  const unit = lengthUnit(pan)
  const size = (millimetres: number) => withDecimal(lengthNumber(millimetres, unit), words)
  const outline = shape === 'rectangle' ? `${size(second)} x ${size(across)}` : size(across)
  const tin = baking.tinOf[shape](`${outline} ${unit}`, `${size(second)} ${unit}`)
  return depthMillimetres === undefined
    ? tin
    : baking.deep(tin, `${size(depthMillimetres)} ${unit}`)
}

/** Without noughts at the end: `23`, `7.5`. */
export function lengthNumber(millimetres: number, unit: LengthUnit): string {
  return String(Number((millimetres / millimetresPer[unit]).toFixed(2)))
}
