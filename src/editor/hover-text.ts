import type {StatedBasis} from '../cookbook/recipe.ts'
import {nutrientName, publishedNutrients} from '../food/nutrients.ts'
import {energyMethodName} from '../report/energy-text.ts'
import type {ComparisonReport, LineReport} from '../report/explanation.ts'
import {reportedFigure, reportedWithUncertainty} from '../report/figure-text.ts'
import type {FiguresReport} from '../report/report.ts'
import {formatFigure, roundedText} from '../units/format-figure.ts'

/** What an ingredient adds, and its share of the whole, in Markdown. */
export function lineHover(
  line: LineReport,
  {per, whole}: {readonly per: StatedBasis; readonly whole: FiguresReport},
): string {
  const {name, amount, role, food, recipe, grams, gramsUncertainty, adds, shares} = line
  const source = recipe === undefined ? `\`${food ?? ''}\`` : `recipe \`${recipe}\``
  const weight = `${formatFigure(grams, 'g')} ± ${formatFigure(gramsUncertainty, 'g')}`
  const head = `**${plainText(name)}**, ${plainText(amount)}: ${weight} edible in the batch, ${source}`
  if (role !== 'counted') {
    return `${head}\n\n${role === 'optional' ? 'Optional' : 'Left uncounted'}: it adds nothing to the figures.`
  }
  const rows = publishedNutrients.flatMap((nutrient) => {
    const added = adds[nutrient]
    if (!added) return []
    const share = shares[nutrient]
    const percent = share === undefined ? '' : `${roundedText(100 * share, 0)} %`
    const cells = [
      reportedFigure(nutrient, added),
      percent,
      reportedFigure(nutrient, whole[nutrient]),
    ]
    return [`| ${nutrientName[nutrient]} | ${cells.join(' | ')} |`]
  })
  return [
    head,
    '',
    `| per ${per} | adds | share | of |`,
    '| --- | ---: | ---: | ---: |',
    ...rows,
  ].join('\n')
}

/** A stated figure beside the computed one, in Markdown. */
export function figureHover(
  {nutrient, statedText, computed, verdict, why, method}: ComparisonReport,
  per: StatedBasis,
): string {
  const by = method === undefined ? '' : `; ${energyMethodName[method]}`
  return [
    `**${nutrientName[nutrient]} per ${per}: ${verdict}**`,
    `stated ${plainText(statedText)}, computed ${reportedWithUncertainty(nutrient, computed)}`,
    `${plainText(why)}${by}`,
  ].join('\n\n')
}

/** A writer's words as they are, not as Markdown: an editor would show its pictures and links. */
function plainText(written: string): string {
  return written.replace(/[\\`*_[\]<>|&~]/gu, '\\$&').replace(/\s+/gu, ' ')
}
