import type {LabelRules} from './label-rules.ts'

/** Sugar alcohols that a law gives an energy of its own. */
export const polyols = [
  'erythritol',
  'xylitol',
  'maltitol',
  'sorbitol',
  'mannitol',
  'isomalt',
  'lactitol',
  'hydrogenated starch hydrolysates',
] as const

export type Polyol = (typeof polyols)[number]

/** Regulation (EU) 1169/2011 Annex XIV: any polyol but erythritol. */
const euPolyol = 2.4

/**
 * Energy of sugar alcohols, kcal/g. US: 21 CFR 101.9(c)(1)(i)(F); EU: Regulation (EU) 1169/2011
 * Annex XIV; both seen in secondary tables. That the US figure for erythritol is exactly 0 is from
 * memory (a secondary table gives 0 to 0.2).
 */
export const polyolKcalPerGram: Readonly<Record<Polyol, Readonly<Record<LabelRules, number>>>> = {
  erythritol: {us: 0, eu: 0},
  xylitol: {us: 2.4, eu: euPolyol},
  maltitol: {us: 2.1, eu: euPolyol},
  sorbitol: {us: 2.6, eu: euPolyol},
  mannitol: {us: 1.6, eu: euPolyol},
  isomalt: {us: 2, eu: euPolyol},
  lactitol: {us: 2, eu: euPolyol},
  'hydrogenated starch hydrolysates': {us: 3, eu: euPolyol},
}
