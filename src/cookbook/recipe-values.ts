import type {MarkdownFile} from './markdown-file.ts'
import type {Located} from './problem.ts'
import type {Report} from './problems.ts'
import type {Pieces, Recipe, Stated} from './recipe.ts'
import type {RecipeValues} from './recipe-fields.ts'
import {reportMissing} from './yaml/collection-readers.ts'
import {rootReading} from './yaml/reader.ts'

/** Everything about a recipe that its front matter says. */
export type RecipeHead = Omit<Recipe, 'slug' | 'path' | 'method'>

/** What the keys say together, with what they leave unsaid reported. */
export function recipeHead(file: MarkdownFile<RecipeValues>, report: Report): RecipeHead {
  const {values, beginning, ending} = file
  reportWhatServesLeavesOpen(file, report)
  const {summary, serves, portion, time, oven, pan, keeps, tags, image, stated, claims} = values
  const divided = piecesOf(values, report)
  const comparison = values['compared with']?.value
  return {
    title: values.title,
    ...(summary && {summary}),
    ...(serves && {serves}),
    ...(values.yield && {batch: values.yield}),
    ...(values['yield factor'] && {yieldFactor: values['yield factor']}),
    ...(values['left behind'] && {leftBehind: values['left behind']}),
    ...(portion && {portion}),
    ...(time?.value['hands-on'] && {handsOnMinutes: time.value['hands-on']}),
    ...(time?.value.total && {totalMinutes: time.value.total}),
    ...(oven && {oven}),
    ...(pan && {pan}),
    ...(divided && {pieces: divided}),
    ...(keeps && {keeps: keeps.value}),
    tags: tags?.value ?? [],
    ...(image && {image: image.value}),
    groups: values.ingredients.value,
    ...(stated && {stated: statedOn(stated.value.basis ?? 'serving', stated.value)}),
    ...(values['energy method'] && {energyMethod: values['energy method']}),
    claims: claims?.value ?? [],
    freeFrom: values['free from']?.value ?? [],
    suits: values.suits?.value ?? [],
    ...(comparison && {comparison}),
    accepted: values.accepted?.value ?? [],
    frontMatter: beginning,
    frontMatterEnd: ending,
  }
}

/** `pieces: 8` or `piece: 95 g`, of which one follows from the other. */
function piecesOf({pieces, piece}: RecipeValues, report: Report): Located<Pieces> | undefined {
  if (pieces && piece) {
    report({
      ruleId: 'readable-value',
      place: piece.place,
      reason: 'The front matter has `pieces` and `piece`, expected one of them',
    })
    return undefined
  }
  if (pieces) return {value: {kind: 'count', count: pieces.value}, place: pieces.place}
  return piece && {value: {kind: 'weight', gramsEach: piece.value.grams.value}, place: piece.place}
}

function statedOn(basis: Stated['basis'], {figures, place}: Omit<Stated, 'basis'>): Stated {
  return {basis, figures, place}
}

/** A recipe that serves nobody is a component: its weight, and what its figures are per, are said. */
function reportWhatServesLeavesOpen(
  {values, beginning, hasKey}: MarkdownFile<RecipeValues>,
  report: Report,
): void {
  if (hasKey('serves')) return
  const reading = rootReading('The front matter', report)
  if (!hasKey('yield') && !hasKey('yield factor')) {
    reportMissing('serves', 'how many portions does the batch give?', {place: beginning, reading})
  } else if (values.stated && !values.stated.value.basis) {
    const {place} = values.stated
    reportMissing(
      'per',
      'are the figures per `100 g` or per `batch`? Without `serves` nothing is per serving',
      {
        place: {start: place.start, end: place.start},
        reading: {...reading, key: 'stated'},
      },
    )
  }
}
