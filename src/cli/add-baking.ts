import {Argument, type Command, InvalidArgumentError} from 'commander'
import type {ExitCode} from './exit-codes.ts'
import type {WaterOptions} from './water-command.ts'

const pansHelp = `
A tin is its shape and size, in cm or in:
  "24 cm round"   "20 cm square, 5 cm deep"   "23 x 33 cm"   "26 cm ring, tube 8 cm"

Examples:
  scalepan pan "20 cm round" "23 cm round"
  scalepan pan "8 in square, 2 in deep" "9 x 13 in, 2 in deep"
`
const waterHelp = `
All temperatures in °C, or all in °F.

Examples:
  scalepan water --dough 25 --room 21 --flour 20 --friction 4
  scalepan water --dough 26 --room 21 --flour 20 --used 30    how much the mixer warmed a dough
`

/** The two sums of the bakehouse. */
export function addBaking(root: Command, end: (code: ExitCode) => void): void {
  root
    .command('pan')
    .summary('by how much to multiply for another tin')
    .description('Prints by how much to multiply a recipe when it goes into another tin.')
    .addArgument(new Argument('<from>', 'the tin of the recipe'))
    .addArgument(new Argument('<to>', 'the tin at hand'))
    .addHelpText('after', pansHelp)
    .action(async (from: string, to: string) => {
      const {panCommand} = await import('./pan-command.ts')
      end(await panCommand(from, to))
    })
  root
    .command('water')
    .summary('how warm the water for a dough must be')
    .description('Prints the water temperature that brings a dough out as warm as desired.')
    .requiredOption('--dough <degrees>', 'desired temperature of the dough', degrees)
    .requiredOption('--room <degrees>', 'temperature of the room', degrees)
    .requiredOption('--flour <degrees>', 'temperature of the flour', degrees)
    .option('--preferment <degrees>', 'temperature of a preferment', degrees)
    .option('--friction <degrees>', 'what mixing adds', degrees, 0)
    .option('--used <degrees>', 'water that was used: works out the friction instead', degrees)
    .addHelpText('after', waterHelp)
    .action(async (options: WaterOptions) => {
      const {waterCommand} = await import('./water-command.ts')
      end(await waterCommand(options))
    })
}

function degrees(text: string): number {
  const value = /^-?\d+(?:\.\d+)?$/.test(text) ? Number(text) : Number.NaN
  if (Number.isFinite(value)) return value
  throw new InvalidArgumentError('Expected a number of degrees such as 25.')
}
