/** I/O: one cookbook folder, read, examined as it is typed, and its findings sent to the editor. */

import {fileURLToPath} from 'node:url'
import {
  type Connection,
  LogMessageNotification,
  MessageType,
  type TextDocuments,
} from 'vscode-languageserver/node'
import type {TextDocument} from 'vscode-languageserver-textdocument'
import type {Examined} from '../build.ts'
import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import {readFolder} from '../cookbook/read-folder.ts'
import type {ReadCookbook} from '../cookbook/sources.ts'
import {cookbookPlace, uriOf} from './cookbook-place.ts'
import {diagnostic} from './diagnostics.ts'
import {OpenCookbook} from './open-cookbook.ts'

/** Milliseconds without a key before what is typed is examined: a pause, not a wait. */
const leastPauseMilliseconds = 150

/** What the folders need of the server. */
export interface Desk {
  readonly connection: Connection
  readonly documents: TextDocuments<TextDocument>
  readonly today: () => string
}

/** A folder of which a file was opened. */
export class OpenFolder {
  /** Resolves when what was last asked of the disk is there. */
  isRead: Promise<void> = Promise.resolve()
  readonly #root: string
  readonly #desk: Desk
  #cookbook: OpenCookbook | undefined
  #pause: NodeJS.Timeout | undefined
  /** As long as the last examination took, so that a big cookbook leaves time for answers. */
  #pauseMilliseconds = leastPauseMilliseconds
  /** URIs the editor shows findings in. */
  #told: ReadonlySet<string> = new Set()

  constructor(root: string, desk: Desk) {
    this.#root = root
    this.#desk = desk
  }

  /** @param path relative to the cookbook folder, with `/` */
  uri(path: string): string {
    return this.#open().get(path)?.uri ?? uriOf({root: this.#root, path})
  }

  /** The cookbook as it is typed now; nothing where the folder is no cookbook. */
  examined(): Examined | undefined {
    const open = this.#open()
    this.#cookbook?.type(new Map([...open].map(([path, one]) => [path, one.getText()] as const)))
    return this.#cookbook?.examined(this.#desk.today())
  }

  /** What was found last, for its names. */
  lastExamined(): Examined | undefined {
    return this.#cookbook?.lastExamined(this.#desk.today())
  }

  reread(): void {
    this.isRead = this.isRead.then(() => this.#readDisk())
  }

  publishSoon(): void {
    clearTimeout(this.#pause)
    this.#pause = setTimeout(() => {
      try {
        this.#publish()
      } catch (error) {
        this.#log(error)
      }
    }, this.#pauseMilliseconds)
  }

  async #readDisk(): Promise<void> {
    try {
      this.#take(await readFolder(fileURLToPath(this.#root)))
      this.#publish()
    } catch (error) {
      this.#log(error)
    }
  }

  /** What was found last stays; a fault of ours must not end the server while somebody writes. */
  #log(error: unknown): void {
    const isOurs = !(error instanceof EnvironmentFailure)
    void this.#desk.connection.sendNotification(LogMessageNotification.type, {
      type: isOurs ? MessageType.Error : MessageType.Warning,
      message: String((isOurs && error instanceof Error && error.stack) || error),
    })
  }

  #take(read: ReadCookbook): void {
    // A folder named recipes or pages is not always part of a cookbook.
    const isCookbook = read.sources.texts.some(({path}) => path.startsWith('recipes/'))
    if (this.#cookbook) this.#cookbook.reread(read)
    else if (isCookbook) this.#cookbook = new OpenCookbook(read)
  }

  #publish(): void {
    clearTimeout(this.#pause)
    const begun = performance.now()
    const examined = this.examined()
    this.#pauseMilliseconds = Math.max(leastPauseMilliseconds, performance.now() - begun)
    if (!examined) return
    const {problems, cookbook} = examined
    const open = this.#open()
    const told = new Set<string>()
    // An open file without findings is told so: the editor sees that its version was looked at.
    for (const path of new Set([...open.keys(), ...problems.map(({file}) => file)])) {
      const uri = this.uri(path)
      const found = problems.filter(({file}) => file === path)
      const diagnostics = found.map((one) => diagnostic(one, cookbook.settings.address))
      const version = open.get(path)?.version
      told.add(uri)
      this.#send({uri, diagnostics, ...(version !== undefined && {version})})
    }
    for (const uri of this.#told) if (!told.has(uri)) this.#send({uri, diagnostics: []})
    this.#told = told
  }

  #send(findings: Parameters<Connection['sendDiagnostics']>[0]): void {
    void this.#desk.connection.sendDiagnostics(findings)
  }

  /** The open files of the folder, by their path in it. */
  #open(): ReadonlyMap<string, TextDocument> {
    return new Map(
      this.#desk.documents.all().flatMap((document) => {
        const found = cookbookPlace(document.uri)
        return found?.root === this.#root ? [[found.path, document] as const] : []
      }),
    )
  }
}
