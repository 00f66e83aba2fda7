#!/usr/bin/env node
/**
 * The command. Only what every call needs is loaded here: the version answers at once, and each
 * command brings its own parts when it is called.
 */

import process from 'node:process'
import {print} from './output.ts'
import {version} from './version.ts'

const args = process.argv.slice(2)

if (args.length === 1 && (args[0] === '--version' || args[0] === '-V')) {
  print(`${version()}\n`)
} else {
  const {run} = await import('./run.ts')
  process.exitCode = await run(args)
}
