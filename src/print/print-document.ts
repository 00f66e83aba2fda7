/** I/O: a page of the site as a PDF. */

import {mkdir, mkdtemp, rm, writeFile} from 'node:fs/promises'
import {tmpdir} from 'node:os'
import path from 'node:path'
import type {Layout} from '../../templates/book/book.ts'
import type {Page} from '../../templates/site.ts'
import type {Settings} from '../cookbook/cookbook.ts'
import {htmlText} from '../site/html.ts'
import type {SiteFile} from '../site/site-file.ts'
import {forPaper} from './for-paper.ts'
import {type Launch, openChromium} from './open-chromium.ts'
import {type PaperInches, printFile} from './print-file.ts'
import {settlePages} from './settle-pages.ts'

export interface PrintJob {
  /** The page, with what printing it before has told. */
  readonly page: (layout: Layout) => Page
  /** What the page loads: style sheets and pictures. */
  readonly files: readonly SiteFile[]
  readonly settings: Settings
}

const millimetresPerInch = 25.4

/** ISO 216; ANSI/ASME Y14.1 size A. */
const papers: Readonly<Record<Settings['print']['paper'], PaperInches>> = {
  A4: [210 / millimetresPerInch, 297 / millimetresPerInch],
  A5: [148 / millimetresPerInch, 210 / millimetresPerInch],
  Letter: [8.5, 11],
}

/** Prints in a folder of its own that nobody sees, and takes the folder away again. */
export async function printDocument(
  {page, files, settings}: PrintJob,
  launch: Launch,
): Promise<Buffer> {
  const folder = await mkdtemp(path.join(tmpdir(), 'scalepan-pages-'))
  try {
    for (const file of files) await writeBelow(folder, file)
    const browser = await openChromium(launch)
    try {
      return await settlePages(async (layout) => {
        const {path: name, tree} = forPaper(page(layout), settings.address)
        const file = await writeBelow(folder, {path: name, content: htmlText(tree)})
        return printFile(browser.devtools, file, papers[settings.print.paper])
      })
    } finally {
      await browser.close()
    }
  } finally {
    await rm(folder, {recursive: true, force: true})
  }
}

async function writeBelow(folder: string, {path: name, content}: SiteFile): Promise<string> {
  const file = path.join(folder, name)
  await mkdir(path.dirname(file), {recursive: true})
  await writeFile(file, content)
  return file
}
