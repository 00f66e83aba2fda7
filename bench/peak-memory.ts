/** I/O: the memory that this process took at its highest. */

import {readFileSync} from 'node:fs'
import process from 'node:process'

/**
 * Peak of the resident memory, MiB. On Linux from the kernel's note on this program alone: what
 * `getrusage` says holds the peak of the process that started it too.
 */
export function peakMegabytes(): number {
  try {
    const [, kilobytes] = /VmHWM:\s+(\d+) kB/u.exec(readFileSync('/proc/self/status', 'utf8')) ?? []
    if (kilobytes !== undefined) return Number(kilobytes) / 1024
  } catch {
    // Another system than Linux.
  }
  return process.resourceUsage().maxRSS / 1024
}
