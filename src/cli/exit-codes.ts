/** What a call ends with. */
export const exitCodes = {
  fine: 0,
  /** The checks found errors. */
  errorsFound: 1,
  /** Usage, an unreadable file, a disk that refuses. */
  couldNotRun: 2,
} as const

export type ExitCode = (typeof exitCodes)[keyof typeof exitCodes]
