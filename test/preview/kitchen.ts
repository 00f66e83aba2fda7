import type {ReadCookbook} from '../../src/cookbook/sources.ts'
import {type PreviewSite, previewSite} from '../../src/preview/preview-site.ts'

/** Porridge whose figures follow from SR28's rolled oats (NDB 08120): 379 kcal per 100 g. */
export const porridge = `---
title: Porridge
serves: 1
yield: 300 g
ingredients:
  rolled oats: 50 g
  water: 250 g
stated: { energy: 190 kcal, protein: 6.6 g }
---

1. Stir the [oats](#rolled-oats) into the [water](#water).

   Salt it if you like.
2. Simmer for 5 min.
`

/** Front matter that cannot be read. */
export const broken = `---
title: Broken
ingredients: none
---
`

/** A cookbook of these recipes, as if it had been read. */
export function kitchen(recipes: Readonly<Record<string, string>>): ReadCookbook {
  const texts = Object.entries(recipes).map(([slug, text]) => ({
    path: `recipes/${slug}.md`,
    text,
  }))
  const settings = {path: 'cookbook.yaml', text: 'title: Boathouse\n'}
  return {sources: {texts: [settings, ...texts], images: []}, problems: []}
}

export function previewOf(
  recipes: Readonly<Record<string, string>>,
  generation = 'first',
): PreviewSite {
  return previewSite(kitchen(recipes), {site: [], own: []}, {generation})
}
