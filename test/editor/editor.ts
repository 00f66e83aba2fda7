/** An editor as far as a test needs one: it speaks the protocol with the command over real stdio. */

import {type ChildProcess, spawn} from 'node:child_process'
import {once} from 'node:events'
import {readFileSync} from 'node:fs'
import process from 'node:process'
import {pathToFileURL} from 'node:url'
import type {
  CodeAction,
  CompletionList,
  Diagnostic,
  FileSystemWatcher,
  Hover,
  Location,
  Position,
  PublishDiagnosticsParams,
  RegistrationParams,
} from 'vscode-languageserver/node'
import {
  createProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node'
import {TextDocument} from 'vscode-languageserver-textdocument'

/** The day the tests check on, so that labels do not age with the calendar. */
const day = String(Date.UTC(2026, 10, 25) / 1000)

export class Editor {
  readonly #server: ChildProcess
  readonly #connection: ReturnType<typeof createProtocolConnection>
  readonly #documents = new Map<string, TextDocument>()
  readonly #found = new Map<string, PublishDiagnosticsParams>()
  #told: () => void = () => undefined
  /** Patterns of the files whose changes on the disk the server wants to hear of. */
  readonly watched: Promise<readonly string[]>

  constructor(entry: string) {
    this.#server = spawn(process.execPath, [entry, 'lsp', '--stdio'], {
      env: {PATH: process.env.PATH, SOURCE_DATE_EPOCH: day},
      stdio: ['pipe', 'pipe', 'inherit'],
    })
    const {stdin, stdout} = this.#server
    if (!stdin || !stdout) throw new Error('the server has no streams')
    this.#connection = createProtocolConnection(
      new StreamMessageReader(stdout),
      new StreamMessageWriter(stdin),
    )
    this.#connection.onNotification(
      'textDocument/publishDiagnostics',
      (found: PublishDiagnosticsParams) => {
        this.#found.set(found.uri, found)
        this.#told()
      },
    )
    this.watched = new Promise((resolve) => {
      this.#connection.onRequest(
        'client/registerCapability',
        ({registrations}: RegistrationParams) => {
          const watchers: readonly FileSystemWatcher[] = registrations[0]?.registerOptions.watchers
          resolve(watchers.map(({globPattern}) => String(globPattern)))
        },
      )
    })
    this.#connection.listen()
  }

  async begin(): Promise<void> {
    await this.#connection.sendRequest('initialize', {
      processId: process.pid,
      rootUri: null,
      capabilities: {workspace: {didChangeWatchedFiles: {dynamicRegistration: true}}},
    })
    await this.#connection.sendNotification('initialized', {})
  }

  /** @returns the exit code of the server */
  async end(): Promise<number | null> {
    const ended = once(this.#server, 'exit')
    await this.#connection.sendRequest('shutdown')
    await this.#connection.sendNotification('exit')
    const [code] = await ended
    this.#connection.dispose()
    return code
  }

  /** Opens a file with what the disk holds, or with another text. */
  async open(file: string, text = readFileSync(file, 'utf8')): Promise<string> {
    const uri = pathToFileURL(file).href
    this.#documents.set(uri, TextDocument.create(uri, 'markdown', 1, text))
    await this.#connection.sendNotification('textDocument/didOpen', {
      textDocument: {uri, languageId: 'markdown', version: 1, text},
    })
    return uri
  }

  /** Tells that somebody else wrote a file. */
  async changedOnDisk(file: string): Promise<void> {
    await this.#connection.sendNotification('workspace/didChangeWatchedFiles', {
      changes: [{uri: pathToFileURL(file).href, type: 2}],
    })
  }

  /** Closes every file without saving it. */
  async closeAll(): Promise<void> {
    for (const uri of this.#documents.keys()) {
      await this.#connection.sendNotification('textDocument/didClose', {textDocument: {uri}})
    }
    this.#documents.clear()
    this.#found.clear()
  }

  /** Replaces the first place that holds `from`, as typing would. */
  async type(uri: string, from: string, to: string): Promise<void> {
    const start = this.text(uri).indexOf(from)
    if (start < 0) throw new Error(`${uri} does not hold ${from}`)
    const document = this.#document(uri)
    const range = {
      start: document.positionAt(start),
      end: document.positionAt(start + from.length),
    }
    await this.#change(uri, [{range, text: to}])
  }

  /** Carries an action out, as the editor does when the writer picks it. */
  async apply({edit}: CodeAction): Promise<void> {
    for (const [uri, edits] of Object.entries(edit?.changes ?? {})) {
      await this.#change(uri, [{text: TextDocument.applyEdits(this.#document(uri), edits)}])
    }
  }

  text(uri: string): string {
    return this.#document(uri).getText()
  }

  /** The place behind the first occurrence of a text. */
  behind(uri: string, text: string): Position {
    const document = this.#document(uri)
    return document.positionAt(document.getText().indexOf(text) + text.length)
  }

  /** Waits until what is found in the file's present version fits. */
  async found(
    uri: string,
    fits: (found: readonly Diagnostic[]) => boolean,
  ): Promise<readonly Diagnostic[]> {
    for (;;) {
      const latest = this.#found.get(uri)
      const isPresent = latest?.version === this.#document(uri).version
      if (latest && isPresent && fits(latest.diagnostics)) return latest.diagnostics
      await new Promise<void>((resolve) => {
        this.#told = resolve
      })
    }
  }

  completion(uri: string, position: Position): Promise<CompletionList> {
    return this.#ask('completion', uri, {position})
  }

  hover(uri: string, position: Position): Promise<Hover | null> {
    return this.#ask('hover', uri, {position})
  }

  definition(uri: string, position: Position): Promise<Location | null> {
    return this.#ask('definition', uri, {position})
  }

  actions(uri: string, {range}: Diagnostic): Promise<readonly CodeAction[]> {
    return this.#ask('codeAction', uri, {range, context: {diagnostics: []}})
  }

  #ask<T>(question: string, uri: string, more: object): Promise<T> {
    const asked = {textDocument: {uri}, ...more}
    return this.#connection.sendRequest<T>(`textDocument/${question}`, asked)
  }

  async #change(uri: string, changes: Parameters<typeof TextDocument.update>[1]): Promise<void> {
    const version = this.#document(uri).version + 1
    this.#documents.set(uri, TextDocument.update(this.#document(uri), changes, version))
    await this.#connection.sendNotification('textDocument/didChange', {
      textDocument: {uri, version},
      contentChanges: changes,
    })
  }

  #document(uri: string): TextDocument {
    const document = this.#documents.get(uri)
    if (!document) throw new Error(`${uri} is not open`)
    return document
  }
}
