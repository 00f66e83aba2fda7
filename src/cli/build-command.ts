import path from 'node:path'
import {examine, siteInput} from '../build.ts'
import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import {readCookbook} from '../cookbook/read-folder.ts'
import {countText} from '../report/count-text.ts'
import {filePathBelow} from '../report/file-path.ts'
import {message} from '../report/message.ts'
import type {Message} from '../report/report.ts'
import {summary} from '../report/summary.ts'
import {textMessages} from '../report/text-report.ts'
import {readAssets} from '../site/read-assets.ts'
import {siteFiles} from '../site/render-site.ts'
import {
  type Recovered,
  recoverSite,
  type SiteWritten,
  siteStanding,
  writeSite,
} from '../site/write-site.ts'
import {type BuildOutcome, buildKey, outcomeIn} from './build-receipt.ts'
import {buildSummary, summaryRows} from './build-summary.ts'
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
export async function buildCommand(options: BuildOptions): Promise<ExitCode> {
  const {content, site, quiet} = options
  refuseOverlap(content, site)
  const progress = new Progress({quiet})
  const recovered = await recoverSite(site)
  remark(recoveredText[recovered], {quiet})
  progress.begin('reading files')
  const read = await readCookbook(content)
  const assets = await readAssets()
  const day = today()
  const key = buildKey(read, assets, {content, day})
  const standing = key === undefined ? undefined : siteStanding(site, key)
  const before = standing && outcomeIn(standing.outcome)
  if (standing && before) {
    progress.end()
    tellMessages(before.warnings, options)
    tellSummary(before, {...nothingWritten, unchanged: standing.files}, progress, options)
    return exitCodes.fine
  }
  progress.expect(read.sources.texts.length)
  const examined = examine(read, {begin: (stage) => progress.beginStage(stage), today: day})
  progress.end()
  const counts = summary(examined)
  const filePath = filePathBelow(content)
  const {title, address} = examined.cookbook.settings
  // Notes are for `check`: a build that went well fits on one screen.
  const messages = examined.problems
    .filter(({severity}) => severity !== 'note')
    .map((problem) => message(problem, filePath, address))
  tellMessages(messages, options)
  if (counts.findings.error > 0) {
    const errors = countText(counts.findings.error, 'error')
    tell(`\n${errors}: nothing was written, ${site} is as it was.\n`)
    return exitCodes.errorsFound
  }
  progress.beginStage('rendering')
  const outcome: BuildOutcome = {title, rows: summaryRows(counts), warnings: messages}
  const files = siteFiles(siteInput(examined, read, assets))
  const written = await writeSite(site, files, key === undefined ? undefined : {key, outcome})
  progress.end()
  tellSummary(outcome, written, progress, options)
  return exitCodes.fine
}

/** Errors, and warnings where they are wanted. */
function tellMessages(messages: readonly Message[], {color, quiet}: BuildOptions): void {
  const told = messages.filter(({severity}) => severity === 'error' || !quiet)
  for (const text of textMessages(told, paintFor('stderr', color))) tell(text)
}

function tellSummary(
  {title, rows}: BuildOutcome,
  written: SiteWritten,
  {seconds}: Progress,
  {site, color, quiet}: BuildOptions,
): void {
  if (quiet) return
  print(buildSummary({title, rows, written, site, seconds}, paintFor('stdout', color)))
}

const nothingWritten: SiteWritten = {
  written: 0,
  unchanged: 0,
  removed: 0,
  left: [],
  setAside: [],
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
