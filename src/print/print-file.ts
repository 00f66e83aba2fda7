/** I/O: one HTML file, printed by a Chromium. */

import {pathToFileURL} from 'node:url'
import {fieldOf} from '../site/json-file.ts'
import type {DevtoolsConversation, Parameters} from './devtools-conversation.ts'

/** Width and height, in. */
export type PaperInches = readonly [width: number, height: number]

const chunkBytes = 1 << 20

/**
 * Prints a page as its style sheets say, with bookmarks from its headings and tagged for those who
 * listen to it. Scripts stay off: a page must be readable without.
 * @param paper for a page whose style sheets name no size
 */
export async function printFile(
  devtools: DevtoolsConversation,
  file: string,
  paper: PaperInches,
): Promise<Buffer> {
  const targetId = textField(
    await devtools.send('Target.createTarget', {url: 'about:blank'}),
    'targetId',
  )
  const attached = await devtools.send('Target.attachToTarget', {targetId, flatten: true})
  const sessionId = textField(attached, 'sessionId')
  const tell = (method: string, params?: Parameters) => devtools.send(method, params, sessionId)
  await tell('Page.enable')
  await tell('Emulation.setScriptExecutionDisabled', {value: true})
  const loaded = devtools.once('Page.loadEventFired', sessionId)
  const opened = await tell('Page.navigate', {url: pathToFileURL(file).href})
  const failure = fieldOf(opened, 'errorText')
  if (failure !== undefined) throw new Error(`Chromium cannot open ${file}: ${String(failure)}`)
  await loaded
  const [paperWidth, paperHeight] = paper
  const printed = await tell('Page.printToPDF', {
    paperWidth,
    paperHeight,
    printBackground: true,
    preferCSSPageSize: true,
    generateTaggedPDF: true,
    generateDocumentOutline: true,
    transferMode: 'ReturnAsStream',
  })
  const handle = textField(printed, 'stream')
  const parts: Buffer[] = []
  for (let isAll = false; !isAll; ) {
    const read = await tell('IO.read', {handle, size: chunkBytes})
    const encoding = fieldOf(read, 'base64Encoded') === true ? 'base64' : 'utf8'
    parts.push(Buffer.from(textField(read, 'data'), encoding))
    isAll = fieldOf(read, 'eof') === true
  }
  await tell('IO.close', {handle})
  await devtools.send('Target.closeTarget', {targetId})
  return Buffer.concat(parts)
}

function textField(value: unknown, key: string): string {
  const text = fieldOf(value, key)
  if (typeof text === 'string') return text
  throw new Error(`Chromium answered without ${key}`)
}
