/** What a lock file has of one package. */
interface Locked {
  readonly dependencies?: Readonly<Record<string, string>>
  readonly dev?: boolean
}

/** A lock file, as far as it matters here. */
export interface Lock {
  readonly packages: Readonly<Record<string, Locked>>
}

/**
 * The lock file of a folder that installs this package from its tarball, and one more package: the
 * same versions that this project was tested with, so that no registry is asked for anything but
 * what is not on the machine yet.
 */
export function lockOf(
  {packages}: Lock,
  {
    tarball,
    integrity,
    beside,
  }: {readonly tarball: string; readonly integrity: string; readonly beside: string},
): object {
  const {'': root} = packages
  const needed = new Map<string, Locked>()
  const add = (name: string, from: string): void => {
    const path = foundFrom(from, name, packages)
    const {dev: _, ...locked} = packages[path] ?? {}
    if (needed.has(path)) return
    needed.set(path, locked)
    for (const one of Object.keys(locked.dependencies ?? {})) add(one, path)
  }
  const names = Object.keys(root?.dependencies ?? {})
  for (const name of [...names, beside]) add(name, '')
  const dependencies = {scalepan: tarball, [beside]: '*'}
  const own = {version: '0.1.0', resolved: tarball, integrity, ...root}
  return {
    name: 'kitchen',
    lockfileVersion: 3,
    requires: true,
    packages: {
      '': {name: 'kitchen', dependencies},
      'node_modules/scalepan': {...own, devDependencies: undefined, name: undefined},
      ...Object.fromEntries(needed),
    },
  }
}

/** Where Node finds a package: in the folder of who asks, or in one around it. */
function foundFrom(from: string, name: string, packages: Lock['packages']): string {
  const path = `${from}${from === '' ? '' : '/'}node_modules/${name}`
  if (path in packages) return path
  if (from === '') throw new Error(`${name} is not in the lock file`)
  return foundFrom(from.slice(0, Math.max(0, from.lastIndexOf('/node_modules/'))), name, packages)
}
