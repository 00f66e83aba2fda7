/** I/O: the language server. It speaks the Language Server Protocol 3.17 over two streams. */

import {
  type Connection,
  createConnection,
  DidChangeWatchedFilesNotification,
  type InitializeResult,
  ProposedFeatures,
  type TextDocumentPositionParams,
  TextDocumentSyncKind,
  TextDocuments,
} from 'vscode-languageserver/node'
import {TextDocument} from 'vscode-languageserver-textdocument'
import {completion} from './completion.ts'
import {cookbookPlace} from './cookbook-place.ts'
import {definition} from './definition.ts'
import {rangeOf} from './diagnostics.ts'
import {type AskedPlace, hover} from './hover.ts'
import type {OpenFolder} from './open-folder.ts'
import {OpenFolders} from './open-folders.ts'
import {quickFixes} from './quick-fixes.ts'

/** Where the editor listens and speaks, and what day it is. */
export interface Surroundings {
  readonly input: NodeJS.ReadableStream
  readonly output: NodeJS.WritableStream
  /** The day of the check, `2026-11-25`. */
  readonly today: () => string
}

/** What the server offers. */
const capabilities: InitializeResult['capabilities'] = {
  textDocumentSync: {openClose: true, change: TextDocumentSyncKind.Incremental, save: true},
  completionProvider: {triggerCharacters: [' ', '{', '[', ',']},
  hoverProvider: true,
  definitionProvider: true,
  codeActionProvider: {codeActionKinds: ['quickfix']},
}

const watched = ['**/{recipes,plans,pages,tables,images}/*', '**/{cookbook,foods}.yaml']

/** Serves one editor until it says that it is done. */
export function serve({input, output, today}: Surroundings): void {
  const connection = createConnection(ProposedFeatures.all, input, output)
  const documents = new TextDocuments(TextDocument)
  const folders = new OpenFolders({connection, documents, today})
  let canWatch = false
  connection.onInitialize(({capabilities: client}) => {
    canWatch = client.workspace?.didChangeWatchedFiles?.dynamicRegistration === true
    return {capabilities, serverInfo: {name: 'scalepan'}}
  })
  connection.onInitialized(async () => {
    if (!canWatch) return
    await connection.client.register(DidChangeWatchedFilesNotification.type, {
      watchers: watched.map((globPattern) => ({globPattern})),
    })
  })
  documents.onDidOpen(({document}) => folders.reread(document.uri))
  documents.onDidSave(({document}) => folders.reread(document.uri))
  documents.onDidClose(({document}) => folders.reread(document.uri))
  documents.onDidChangeContent(({document}) => folders.typed(document.uri))
  connection.onDidChangeWatchedFiles(({changes}) => folders.changed(changes.map(({uri}) => uri)))
  answerQuestions(connection, {folders, documents})
  documents.listen(connection)
  connection.listen()
}

interface Open {
  readonly folders: OpenFolders
  readonly documents: TextDocuments<TextDocument>
}

function answerQuestions(connection: Connection, open: Open): void {
  connection.onCompletion(async (asked) => {
    const at = await place(asked, open)
    const examined = at?.folder.lastExamined()
    return at && examined && completion(at.asked, examined)
  })
  connection.onHover(async (asked) => {
    const at = await place(asked, open)
    const examined = at?.folder.examined()
    return at && examined && hover(at.asked, examined)
  })
  connection.onDefinition(async (asked) => {
    const at = await place(asked, open)
    const examined = at?.folder.examined()
    const written = at && examined && definition(at.asked, examined)
    return written && {uri: at.folder.uri(written.path), range: rangeOf(written.place)}
  })
  connection.onCodeAction(async ({textDocument: {uri}, range}) => {
    const at = await place({textDocument: {uri}, position: range.start}, open)
    const examined = at?.folder.examined()
    if (!at || !examined) return []
    const {path, text} = at.asked
    const problems = examined.problems.filter(({file}) => file === path)
    const {address} = examined.cookbook.settings
    return [...quickFixes({uri, path, text, problems, address}, range)]
  })
}

/** What is asked about, and the cookbook it belongs to. */
async function place(
  {textDocument: {uri}, position}: TextDocumentPositionParams,
  {folders, documents}: Open,
): Promise<{readonly asked: AskedPlace; readonly folder: OpenFolder} | undefined> {
  const document = documents.get(uri)
  const path = cookbookPlace(uri)?.path
  const folder = await folders.of(uri)
  if (!document || path === undefined || !folder) return undefined
  const asked = {path, text: document.getText(), offset: document.offsetAt(position)}
  return {asked, folder}
}
