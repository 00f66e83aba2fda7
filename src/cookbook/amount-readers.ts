import type {Amount, WeightAmount} from '../units/amount.ts'
import {type Kitchen, parseAmount, parseWeight} from '../units/parse-amount.ts'
import type {Reader} from './yaml/reader.ts'
import {parsedText} from './yaml/text-readers.ts'

/** An amount as cooks write it. */
export function amountReader(kitchen: Kitchen): Reader<Amount> {
  return parsedText('an amount such as `150 g`', (text) => parseAmount(text, kitchen), [
    '150 g',
    '½ cup',
    '2 cloves',
    '13.5 g (1 tbsp)',
    '½ batch',
  ])
}

/** An amount that has to be a weight. */
export function weightReader(kitchen: Kitchen): Reader<WeightAmount> {
  return parsedText('a weight such as `150 g`', (text) => parseWeight(text, kitchen), ['150 g'])
}
