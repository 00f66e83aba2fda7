import {writeFile} from 'node:fs/promises'
import process from 'node:process'
import type {Layout} from '../../templates/book/book.ts'
import {cardSheetsPage, cardsPage} from '../../templates/cards.tsx'
import {cookbookPage} from '../../templates/cookbook.tsx'
import {planPage} from '../../templates/plan.tsx'
import type {Page, Site} from '../../templates/site.ts'
import {ruleTexts} from '../check/rule-texts.ts'
import {diskReason, EnvironmentFailure} from '../cookbook/environment-failure.ts'
import {documentFiles} from '../print/document-files.ts'
import {findChromium} from '../print/find-chromium.ts'
import {printDocument} from '../print/print-document.ts'
import {reproducible} from '../print/reproducible.ts'
import {countText} from '../report/count-text.ts'
import {textMessages} from '../report/text-report.ts'
import {readAssets} from '../site/read-assets.ts'
import {siteOf} from '../site/render-site.ts'
import {paintFor} from './colour.ts'
import {examinedFolder} from './examined-folder.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import {print, tell} from './output.ts'
import type {SharedOptions} from './shared-options.ts'
import {sourceDate} from './today.ts'

export type Printable = 'cookbook' | 'cards' | 'list'

export interface PrintOptions extends SharedOptions {
  readonly content: string
  readonly out?: string
  readonly browser?: string
  /** False with `--no-sandbox`. */
  readonly sandbox: boolean
  /** Cards on sheets of paper, to cut and fold. */
  readonly sheets?: true
  /** Slug of the plan whose list is printed. */
  readonly plan?: string
}

/** Makes a PDF of a part of the cookbook; the checks must find no error, as before a build. */
export async function printCommand(what: Printable, options: PrintOptions): Promise<ExitCode> {
  const {content, color, out = `${what}.pdf`} = options
  const {read, examined, messages} = await examinedFolder(content, options)
  const errors = messages.filter(({severity}) => severity === 'error')
  if (errors.length > 0) {
    for (const text of textMessages(errors, paintFor('stderr', color))) tell(text)
    tell(`\n${countText(errors.length, 'error')}: nothing was printed.\n`)
    return exitCodes.errorsFound
  }
  const assets = await readAssets()
  const input = {...examined, rules: ruleTexts, images: read.sources.images, assets}
  const site = siteOf(input)
  const page = documentOf(what, site, options)
  const executable = await findChromium({
    named: options.browser,
    env: process.env,
    folder: process.cwd(),
  })
  const pdf = await printDocument(
    {
      page,
      files: documentFiles(input, site),
      settings: examined.cookbook.settings,
    },
    {executable, hasSandbox: options.sandbox},
  )
  const date = sourceDate()
  await save(out, date === undefined ? pdf : reproducible(pdf, date))
  print(`${out}\n`)
  return exitCodes.fine
}

function documentOf(
  what: Printable,
  site: Site,
  {plan, sheets}: PrintOptions,
): (layout: Layout) => Page {
  switch (what) {
    case 'cookbook':
      return (layout) => cookbookPage(site, layout)
    case 'cards':
      return () => (sheets ? cardSheetsPage(site) : cardsPage(site))
    case 'list': {
      const chosen = planOf(site, plan)
      return () => planPage(site, chosen)
    }
  }
}

function planOf(
  {cookbook: {plans}}: Site,
  slug: string | undefined,
): Site['cookbook']['plans'][number] {
  const found =
    slug === undefined && plans.length === 1 ? plans : plans.filter((plan) => plan.slug === slug)
  const [plan] = found
  if (plan !== undefined) return plan
  const slugs = plans.map((one) => one.slug).join(', ')
  throw new EnvironmentFailure(
    slug === undefined ? 'A list is printed for one plan' : `No plan is called ${slug}`,
    slugs === '' ? 'This cookbook has no plans' : `Name one with \`--plan\`: ${slugs}`,
  )
}

async function save(out: string, pdf: Buffer): Promise<void> {
  try {
    await writeFile(out, pdf)
  } catch (error) {
    throw new EnvironmentFailure(`Cannot write ${out}: ${diskReason(error)}`)
  }
}
