import {frictionFactor, waterTemperature} from '../nutrition/baking/water-temperature.ts'
import {roundedText} from '../units/format-figure.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import {print, tell} from './output.ts'

/** Temperatures as given on the command line, all of one scale. */
export interface WaterOptions {
  readonly dough: number
  readonly room: number
  readonly flour: number
  readonly preferment?: number
  readonly friction: number
  /** Temperature of the water that was used; then the friction is worked out. */
  readonly used?: number
}

/** Degrees in which water is liquid enough to mix with, °C, and the same for °F. */
const liquid = {celsius: [0, 60], fahrenheit: [32, 140]} as const

/** Prints how warm the water must be for a dough, or how much the mixer warmed one. */
export async function waterCommand(options: WaterOptions): Promise<ExitCode> {
  const {dough, used, friction, ...others} = options
  if (used !== undefined) {
    const warmed = frictionFactor({...others, dough, water: used})
    print(
      `Mixing added ${roundedText(warmed, 1)} degrees: next time give --friction ${roundedText(warmed, 1)}\n`,
    )
    return exitCodes.fine
  }
  const water = waterTemperature({...others, desired: dough, friction})
  print(`Water at ${roundedText(water, 1)} degrees\n`)
  // A dough above 45 degrees is only wanted in Fahrenheit.
  const [coldest, hottest] = dough > 45 ? liquid.fahrenheit : liquid.celsius
  if (water < coldest) tell('Colder than ice: use ice for part of it, or cool the flour.\n')
  if (water > hottest) tell('Hot enough to kill yeast (common practice: about 60 °C, 140 °F).\n')
  return exitCodes.fine
}
