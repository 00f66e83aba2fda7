import {type Examined, examine} from '../build.ts'
import type {ReadCookbook, SourceText} from '../cookbook/sources.ts'
import {UnderstoodBefore} from '../cookbook/understood-before.ts'

/** A cookbook as the editor has it: what stands on the disk, and what is typed over it. */
export class OpenCookbook {
  #read: ReadCookbook
  /** By path below the cookbook folder. */
  #typed: ReadonlyMap<string, string> = new Map()
  #examined: Examined | undefined
  readonly #before = new UnderstoodBefore()
  #last: Examined | undefined

  constructor(read: ReadCookbook) {
    this.#read = read
  }

  /** Takes what the disk holds now. */
  reread(read: ReadCookbook): void {
    this.#read = read
    this.#examined = undefined
  }

  /** Takes the texts of the open files; those that are not saved yet belong to the cookbook too. */
  type(typed: ReadonlyMap<string, string>): void {
    const isSame =
      typed.size === this.#typed.size &&
      [...typed].every(([path, text]) => this.#typed.get(path) === text)
    if (isSame) return
    this.#typed = typed
    this.#examined = undefined
  }

  /** What there is to say about the cookbook as it stands in the editor. */
  examined(today: string): Examined {
    this.#examined ??= examine(withTyped(this.#read, this.#typed), {today, before: this.#before})
    this.#last = this.#examined
    return this.#examined
  }

  /** The last examination, whose names are good enough to offer while somebody types. */
  lastExamined(today: string): Examined {
    return this.#last ?? this.examined(today)
  }
}

function withTyped(read: ReadCookbook, typed: ReadonlyMap<string, string>): ReadCookbook {
  if (typed.size === 0) return read
  const {texts, images} = read.sources
  const onDisk = texts.filter(({path}) => !typed.has(path))
  const open = Array.from(typed, ([path, text]): SourceText => ({path, text}))
  // In path order, as a folder is read.
  const all = [...onDisk, ...open].toSorted((left, right) => (left.path < right.path ? -1 : 1))
  // What the disk's version of an open file had wrong is past.
  const problems = read.problems.filter(({file}) => !typed.has(file))
  return {sources: {texts: all, images}, problems}
}
