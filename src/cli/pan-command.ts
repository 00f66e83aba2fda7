import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import type {Pan} from '../cookbook/recipe.ts'
import {panScale} from '../nutrition/baking/pan-size.ts'
import {parsePan} from '../nutrition/baking/parse-pan.ts'
import {roundedText} from '../units/format-figure.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import {print} from './output.ts'

/** Prints by how much to multiply a recipe when it goes into another tin. */
export async function panCommand(from: string, to: string): Promise<ExitCode> {
  const [old, other] = [read(from), read(to)]
  const {byArea, byVolume} = panScale(old, other)
  const lines = [
    `${old.text} → ${other.text}`,
    `  × ${roundedText(byArea, 2)} for the same depth of batter (area ÷ area)`,
    ...(byVolume === undefined
      ? ['  say how deep both tins are to fill them to the same share']
      : [`  × ${roundedText(byVolume, 2)} filled to the same share (volume ÷ volume)`]),
    'Multiply the ingredients; baking time does not scale with them: look earlier, and test.',
  ]
  print(`${lines.join('\n')}\n`)
  return exitCodes.fine
}

function read(text: string): Pan {
  const pan = parsePan(text)
  if (pan.ok) return pan.value
  throw new EnvironmentFailure(`${text} is no tin, expected ${pan.expected}`, 'Quote each tin')
}
