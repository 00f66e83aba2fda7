/**
 * I/O: runs a program in this process and writes what the process used into a file, as JSON.
 * Arguments: the file, the program's path, the program's own arguments.
 */

import {writeFileSync} from 'node:fs'
import process from 'node:process'
import {pathToFileURL} from 'node:url'
import {peakMegabytes} from '../peak-memory.ts'

const [node = '', , usageFile = '', program = '', ...args] = process.argv
// The program sees the arguments it would have had alone.
process.argv = [node, program, ...args]

process.on('exit', () => {
  // Of all threads of the process.
  const {userCPUTime, systemCPUTime} = process.resourceUsage()
  const cpuSeconds = (userCPUTime + systemCPUTime) / 1_000_000
  writeFileSync(usageFile, JSON.stringify({cpuSeconds, peakMegabytes: peakMegabytes()}))
})

await import(pathToFileURL(program).href)
