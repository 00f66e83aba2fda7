import type {Position} from 'unist'
import type {Cookbook} from '../../cookbook/cookbook.ts'
import {placeBetween, pointsOf} from '../../cookbook/points.ts'
import type {SourceText} from '../../cookbook/sources.ts'
import type {Food} from '../../food/food.ts'
import type {Computed} from '../../nutrition/computed.ts'
import type {CookbookRule} from '../rule.ts'
import {foodsOf} from '../rules/food-used.ts'
import {labelAge} from '../rules/label-age.ts'
import {labelSanity} from '../rules/label-sanity.ts'
import {outlierOddities, sameNameOddities} from './outlier.ts'
import {type Oddity, rowOddities} from './row-sanity.ts'

/** Something to look at again: a figure may be right and odd. */
export interface AuditFinding {
  readonly reason: string
  readonly note?: string
  /** Relative to the cookbook folder; absent for a row of the built-in table. */
  readonly file?: string
  readonly place?: Position
}

export interface Audit {
  readonly labels: number
  readonly rows: number
  /** Labels first, then rows, each in name order. */
  readonly findings: readonly AuditFinding[]
}

/** What an audit looks at. */
export interface AuditSubject {
  readonly cookbook: Cookbook
  readonly all: ReadonlyMap<string, Computed>
  /** The cookbook's files: a brought row is shown where it stands. */
  readonly texts: readonly SourceText[]
  /** The day of the audit, `2026-11-25`. */
  readonly today: string
}

/** A packet is read again once a year unless the cookbook says otherwise: common practice, no source. */
const usualLabelDays = 365

/**
 * Looks at every label, and at every table row that a recipe uses: sanity, age of labels, and
 * energy beside that of the nearest foods of the tables.
 */
export function auditFoods(subject: AuditSubject): Audit {
  const {cookbook, all} = subject
  const labels = cookbook.foods.own.filter(({label}) => label)
  const rows = rowsInUse(cookbook, all)
  const table = [...cookbook.foods.all()].filter(({provenance}) => provenance.kind === 'table')
  return {
    labels: labels.length,
    rows: rows.length,
    findings: [
      ...labelFindings(subject),
      ...labels.flatMap((food) =>
        placed(
          [...outlierOddities(food, table), ...sameNameOddities(food, table)],
          food.named ?? {},
        ),
      ),
      ...rows.flatMap((food) =>
        placed([...rowOddities(food), ...outlierOddities(food, table)], rowPlace(food, subject)),
      ),
    ],
  }
}

function labelFindings({cookbook, all, today}: AuditSubject): readonly AuditFinding[] {
  const {settings} = cookbook
  const labelDays = settings.labelDays ?? usualLabelDays
  const aged = {...cookbook, settings: {...settings, labelDays}}
  return [labelSanity, labelAge].flatMap((rule: CookbookRule) => [
    ...rule.check({cookbook: aged, all, today}),
  ])
}

/** Table foods that a recipe names, each row once; what a law defines needs no second look. */
function rowsInUse(cookbook: Cookbook, all: AuditSubject['all']): readonly Food[] {
  const rows = new Map<string, Food>()
  for (const computed of all.values()) {
    for (const food of foodsOf(computed, cookbook)) {
      if (food.provenance.kind === 'table') rows.set(food.id, food)
    }
  }
  return [...rows.values()].toSorted((left, right) => (left.name < right.name ? -1 : 1))
}

function placed(
  oddities: readonly Oddity[],
  at: Pick<AuditFinding, 'file' | 'place'>,
): readonly AuditFinding[] {
  return oddities.map((oddity) => ({...oddity, ...at}))
}

/** The line of a brought table; for a built-in row the entry of foods.yaml that names it, if any. */
function rowPlace(
  {provenance, named}: Food,
  {texts}: AuditSubject,
): Pick<AuditFinding, 'file' | 'place'> {
  if (provenance.kind !== 'table') return named ?? {}
  const file = `tables/${provenance.table}.tsv`
  const text = texts.find(({path}) => path === file)?.text
  const before = text?.indexOf(`\n${provenance.row}\t`) ?? -1
  if (text === undefined || before < 0) return named ?? {}
  const start = before + 1
  return {file, place: placeBetween(pointsOf(text), start, start + provenance.row.length)}
}
