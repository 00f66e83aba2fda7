import {figureQuotient} from '../../food/figure-quotient.ts'
import {isComplete} from '../../food/figures.ts'
import {type Nutrient, nutrientName} from '../../food/nutrients.ts'
import {roundedText} from '../../units/format-figure.ts'
import {expandedUncertainty} from '../../units/uncertain.ts'
import {changeText} from '../comparison/judge-comparison.ts'
import type {Sides} from '../comparison/sides.ts'
import {isAtMost} from '../is-at-most.ts'
import type {Condition, Test} from './condition.ts'

/** Less of a nutrient than in what the dish is compared with, by a share of 0 to 1 or more. */
export function reducedBy(nutrient: Nutrient, share: number): Condition {
  return beside(
    nutrient,
    `\`${roundedText(100 * share, 0)} % less\` or lower`,
    (ratio, uncertainty) => isAtMost(ratio + uncertainty, 1 - share),
  )
}

/** More of a nutrient than in what the dish is compared with, by a share or more. */
export function increasedBy(nutrient: Nutrient, share: number): Condition {
  return beside(
    nutrient,
    `\`${roundedText(100 * share, 0)} % more\` or higher`,
    (ratio, uncertainty) => isAtMost(1 + share, ratio - uncertainty),
  )
}

function beside(
  nutrient: Nutrient,
  expected: string,
  isKept: (ratio: number, uncertainty: number) => boolean,
): Condition {
  return ({beside: sides}) => {
    if (!sides) {
      return {
        outcome: 'unknown',
        found: 'nothing to compare it with',
        expected: '`compared with` and the usual dish or food',
      }
    }
    return tested(nutrient, sides, expected, isKept)
  }
}

function tested(
  nutrient: Nutrient,
  {here, there, name, basis}: Sides,
  expected: string,
  isKept: (ratio: number, uncertainty: number) => boolean,
): Test {
  const [mine, theirs] = [here[nutrient], there[nutrient]]
  const what = nutrientName[nutrient]
  if (!isComplete(mine) || !isComplete(theirs) || theirs.value <= 0) {
    const missing = [...mine.missing, ...theirs.missing].map((food) => `\`${food}\``).join(', ')
    return {
      outcome: 'unknown',
      found: `unknown ${what}`,
      expected: missing ? `a figure for ${missing}` : `some ${what} in \`${name}\``,
    }
  }
  const ratio = figureQuotient(mine, theirs)
  return {
    outcome: isKept(ratio.value, expandedUncertainty(ratio)) ? 'holds' : 'fails',
    found: `${what} \`${changeText(ratio)}\` than \`${name}\` per ${basis}`,
    expected,
  }
}
