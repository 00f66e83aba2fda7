/**
 * The command could not run: the disk or the call said no, not the cookbook. Kept apart from
 * findings, which are data; a command that meets one ends with exit code 2.
 */
export class EnvironmentFailure extends Error {
  /** What the writer can do next, one line. */
  readonly hint: string | undefined

  constructor(message: string, hint?: string) {
    super(message)
    this.name = 'EnvironmentFailure'
    this.hint = hint
  }
}

const reasons: ReadonlyMap<string, string> = new Map([
  ['EACCES', 'permission denied'],
  ['EPERM', 'not permitted'],
  ['EROFS', 'the disk is read-only'],
  ['ENOSPC', 'the disk is full'],
  ['EDQUOT', 'the disk quota is used up'],
  ['EFBIG', 'the file would be larger than the disk allows'],
  ['ENOENT', 'not found'],
  ['ENOTDIR', 'a file stands where a folder is needed'],
  ['EISDIR', 'a folder stands where a file is needed'],
  ['EBUSY', 'in use by another program'],
  ['EMFILE', 'too many files are open'],
  ['EIO', 'the disk reports a fault'],
  ['ELOOP', 'its links lead in a circle'],
  ['ENAMETOOLONG', 'the name is too long'],
])

/** The system's code of a failed disk operation (`ENOENT`), or undefined where there is none. */
export function errorCode(error: unknown): string | undefined {
  return error instanceof Error && 'code' in error && typeof error.code === 'string'
    ? error.code
    : undefined
}

/** Why the disk said no, in a writer's words. Errors that are not the disk's are bugs and pass on. */
export function diskReason(error: unknown): string {
  const code = errorCode(error)
  if (code === undefined) throw error
  return reasons.get(code) ?? `the system reports ${code}`
}
