import path from 'node:path'
import {examine, siteInput} from '../build.ts'
import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import {readCookbook} from '../cookbook/read-folder.ts'
import {countText} from '../report/count-text.ts'
import {filePathBelow} from '../report/file-path.ts'
import {message} from '../report/message.ts'
import {summary} from '../report/summary.ts'
import {textMessages} from '../report/text-report.ts'
import {readAssets} from '../site/read-assets.ts'
import {siteFiles} from '../site/render-site.ts'
import {type Recovered, recoverSite, writeSite} from '../site/write-site.ts'
import {buildSummary} from './build-summary.ts'
import {paintFor} from './colour.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import {print, remark, tell} from './output.ts'
import {Progress} from './progress.ts'
import type {SharedOptions} from './shared-options.ts'
import {today} from './today.ts'

interface BuildOptions extends SharedOptions {
  readonly content: string
  readonly site: string
}

/** Checks a cookbook and, where nothing is wrong, writes its site. */
export async function buildCommand({content, site, color, quiet}: BuildOptions): Promise<ExitCode> {
  refuseOverlap(content, site)
  const progress = new Progress({quiet})
  const recovered = await recoverSite(site)
  remark(recoveredText[recovered], {quiet})
  progress.begin('reading files')
  const read = await readCookbook(content)
  const assets = await readAssets()
  progress.expect(read.sources.texts.length)
  const examined = examine(read, {
    begin: (stage) => progress.beginStage(stage),
    today: today(),
  })
  progress.end()
  const counts = summary(examined)
  const filePath = filePathBelow(content)
  const {address} = examined.cookbook.settings
  // Notes are for `check`: a build that went well fits on one screen.
  const told = examined.problems.filter(
    ({severity}) => severity === 'error' || (severity === 'warning' && !quiet),
  )
  const messages = told.map((problem) => message(problem, filePath, address))
  for (const text of textMessages(messages, paintFor('stderr', color))) tell(text)
  if (counts.findings.error > 0) {
    const errors = countText(counts.findings.error, 'error')
    tell(`\n${errors}: nothing was written, ${site} is as it was.\n`)
    return exitCodes.errorsFound
  }
  progress.beginStage('rendering')
  const written = await writeSite(site, siteFiles(siteInput(examined, read, assets)))
  progress.end()
  if (quiet) return exitCodes.fine
  const {title} = examined.cookbook.settings
  const seconds = progress.seconds
  print(buildSummary({title, counts, written, site, seconds}, paintFor('stdout', color)))
  return exitCodes.fine
}

const recoveredText: Readonly<Record<Recovered, string>> = {
  nothing: '',
  finished: 'An earlier build was interrupted while it wrote the site; it is finished now.\n',
  'taken back': 'An earlier build was interrupted while it wrote the site; it is taken back now.\n',
}

/** A site inside its own cookbook would be read as part of it. */
function refuseOverlap(content: string, site: string): void {
  const [first] = path.relative(content, site).split(path.sep)
  if (first === '..' || path.isAbsolute(first ?? '')) return
  throw new EnvironmentFailure(
    `The site folder ${site} lies in the cookbook folder ${content}`,
    'Name a folder beside it with `--site DIR`',
  )
}
