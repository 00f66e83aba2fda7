import {checkCookbook} from './check/check-cookbook.ts'
import {ruleTexts} from './check/rule-texts.ts'
import {idleSeverities, withSeverities} from './check/severities.ts'
import type {Cookbook} from './cookbook/cookbook.ts'
import type {Problem} from './cookbook/problem.ts'
import {inReportOrder} from './cookbook/report-order.ts'
import type {ReadCookbook} from './cookbook/sources.ts'
import {understandCookbook} from './cookbook/understand.ts'
import type {UnderstoodBefore} from './cookbook/understood-before.ts'
import {computeCookbook} from './nutrition/compute-cookbook.ts'
import type {Computed} from './nutrition/computed.ts'
import {renderSite, type SiteInput} from './site/render-site.ts'
import type {SiteFile} from './site/site-file.ts'

/** Everything there is to say about a cookbook, before any page is made. */
export interface Examined {
  readonly cookbook: Cookbook
  /** By slug; recipes that could not be computed are not in it. */
  readonly computed: ReadonlyMap<string, Computed>
  /** Of every stage, in report order. */
  readonly problems: readonly Problem[]
}

export interface Built extends Examined {
  /** Every file of the site; none while there are errors. */
  readonly files: readonly SiteFile[]
}

/** What a build is doing, in the order it does it. */
export type Stage = 'understanding' | 'computing' | 'checking' | 'rendering'

/** What an examination is told beside the texts. */
export interface Circumstances {
  /** Is told each stage as it begins. */
  readonly begin?: (stage: Stage) => void
  /** The day of the check, `2026-11-25`: without it, nothing is said about the age of labels. */
  readonly today?: string
  /** What an earlier examination of the cookbook understood. */
  readonly before?: UnderstoodBefore
}

/** Understands, computes and checks a cookbook. Pure: the same texts give the same findings. */
export function examine(
  read: ReadCookbook,
  {begin = ignore, today, before}: Circumstances = {},
): Examined {
  begin('understanding')
  const understood = understandCookbook(read.sources, before)
  begin('computing')
  const {computed, problems} = computeCookbook(understood.cookbook)
  begin('checking')
  const found = checkCookbook(understood.cookbook, computed, today)
  return {
    cookbook: understood.cookbook,
    computed,
    problems: inReportOrder([
      ...withSeverities(
        [...read.problems, ...understood.problems, ...problems],
        understood.cookbook,
      ),
      ...idleSeverities(understood.cookbook),
      ...found,
    ]),
  }
}

/**
 * The whole way: texts to pages and findings. Pure: the same texts give the same bytes.
 * @param assets the compiled stylesheet and scripts that pages load
 */
export function build(
  read: ReadCookbook,
  assets: readonly SiteFile[],
  circumstances: Circumstances = {},
): Built {
  const examined = examine(read, circumstances)
  if (examined.problems.some(({severity}) => severity === 'error')) return {...examined, files: []}
  circumstances.begin?.('rendering')
  return {...examined, files: renderSite(siteInput(examined, read, assets))}
}

/** What pages are made of. */
export function siteInput(
  examined: Examined,
  read: ReadCookbook,
  assets: readonly SiteFile[],
): SiteInput {
  return {...examined, rules: ruleTexts, images: read.sources.images, assets}
}

const ignore = () => undefined
