/**
 * I/O: runs a program in this process and writes what the process used into a file, as JSON.
 * Arguments: the file, the program's path, the program's own arguments.
 */

import {readFileSync, writeFileSync} from 'node:fs'
import process from 'node:process'
import {pathToFileURL} from 'node:url'

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

/**
 * Peak of the resident memory. On Linux from the kernel's note on this program alone: what
 * `getrusage` says holds the peak of the process that started it too.
 */
function peakMegabytes(): number {
  try {
    const [, kilobytes] = /VmHWM:\s+(\d+) kB/u.exec(readFileSync('/proc/self/status', 'utf8')) ?? []
    if (kilobytes !== undefined) return Number(kilobytes) / 1024
  } catch {
    // Another system than Linux.
  }
  return process.resourceUsage().maxRSS / 1024
}
