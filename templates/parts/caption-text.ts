/** The text under a video or a picture, put together by a build and by a page's script alike. */

export interface CaptionLine {
  readonly weight: string
  readonly measure?: string | undefined
  readonly name: string
  readonly note?: string | undefined
}

/** `30 g (2 tbsp) pepper paste, if wanted`. */
export function captionLine({weight, measure, name, note}: CaptionLine): string {
  const amount = measure === undefined ? weight : `${weight} (${measure})`
  return `${amount} ${name}${note === undefined ? '' : `, ${note}`}`
}

export interface Caption {
  readonly title: string
  readonly servings?: string | undefined
  readonly ingredients: readonly string[]
  /** What the figures refer to. */
  readonly basis: string
  /** Each with its name. */
  readonly figures: readonly string[]
  readonly allergens: string
  readonly link?: string | undefined
}

export function captionOf(caption: Caption): string {
  const {title, servings, ingredients, basis, figures, allergens, link} = caption
  return [
    title,
    servings,
    '',
    ...ingredients,
    '',
    `${basis}: ${figures.join(', ')}`,
    allergens || undefined,
    link,
    '',
  ]
    .filter((text) => text !== undefined)
    .join('\n')
}
