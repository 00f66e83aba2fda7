import {CommanderError} from 'commander'
import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import {printable} from '../report/printable.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import {endQuietlyOnBrokenPipe, print, tell} from './output.ts'
import {program} from './program.ts'
import {whatNext} from './what-next.ts'

/** Runs one call of the command. */
export async function run(args: readonly string[]): Promise<ExitCode> {
  endQuietlyOnBrokenPipe()
  if (args.length === 0) {
    print(whatNext())
    return exitCodes.fine
  }
  let code: ExitCode = exitCodes.fine
  try {
    await program((result) => {
      code = result
    }).parseAsync(args, {from: 'user'})
    return code
  } catch (error) {
    return failed(error)
  }
}

function failed(error: unknown): ExitCode {
  if (error instanceof CommanderError) {
    return error.exitCode === 0 ? exitCodes.fine : exitCodes.couldNotRun
  }
  if (error instanceof EnvironmentFailure) {
    const lines = [...error.message.split('\n'), ...(error.hint ? [error.hint] : [])]
    tell(`scalepan: ${lines.map(printable).join('\n  ')}\n`)
    return exitCodes.couldNotRun
  }
  const stack = error instanceof Error ? error.stack : String(error)
  tell(
    `scalepan: this is a fault in scalepan, not in your cookbook. Please report it with:\n${stack}\n`,
  )
  return exitCodes.couldNotRun
}
