import type {Aisle} from '../food.ts'
import type {LabelRules} from '../label-rules.ts'
import {type Polyol, polyolKcalPerGram} from '../polyols.ts'

/** A pure substance that the release lacks; its energy is what a law assigns to it. */
export interface RegulationRow {
  readonly name: string
  readonly also?: readonly string[]
  readonly aisle: Aisle
  /** What 100 g of it are 100 g of; a polyol and a sugar-like sweetener are carbohydrate as well. */
  readonly substance: Polyol | 'fibre' | 'sweet carbohydrate'
  readonly kcalPerGram: Readonly<Record<LabelRules, number>>
  /** Where each law says so. */
  readonly document: Readonly<Record<LabelRules, string>>
}

const polyolDocument = {
  us: '21 CFR 101.9(c)(1)(i)(F)',
  eu: 'Regulation (EU) 1169/2011 Annex XIV',
} as const

function polyolRow(name: Polyol, also: readonly string[]): RegulationRow {
  return {
    name,
    also,
    aisle: 'sweeteners',
    substance: name,
    kcalPerGram: polyolKcalPerGram[name],
    document: polyolDocument,
  }
}

/**
 * Sugar alcohols, and three more that lightened recipes use. Polydextrose, inulin and allulose
 * were seen in summaries: FDA guidance of June 2018 (polydextrose) and October 2020 (allulose: in
 * total carbohydrate, not in sugars), 21 CFR 101.9(c)(1)(i)(C) (soluble non-digestible
 * carbohydrate), Regulation (EU) 1169/2011 Annex XIV (fibre). That law has no figure of its own for
 * allulose, so the one for carbohydrate applies.
 */
export const regulation: readonly RegulationRow[] = [
  polyolRow('erythritol', ['erythritol granules', 'erythritol powder']),
  polyolRow('xylitol', ['birch sugar']),
  polyolRow('maltitol', ['maltitol powder']),
  polyolRow('sorbitol', ['sorbitol powder']),
  polyolRow('mannitol', []),
  polyolRow('isomalt', []),
  polyolRow('lactitol', []),
  {
    name: 'allulose',
    also: ['psicose'],
    aisle: 'sweeteners',
    substance: 'sweet carbohydrate',
    kcalPerGram: {us: 0.4, eu: 4},
    document: {us: 'FDA guidance on allulose, October 2020', eu: polyolDocument.eu},
  },
  {
    name: 'inulin',
    also: ['chicory root fibre', 'inulin powder'],
    aisle: 'baking',
    substance: 'fibre',
    kcalPerGram: {us: 2, eu: 2},
    document: {us: '21 CFR 101.9(c)(1)(i)(C)', eu: polyolDocument.eu},
  },
  {
    name: 'polydextrose',
    aisle: 'baking',
    substance: 'fibre',
    kcalPerGram: {us: 1, eu: 2},
    document: {us: 'FDA guidance on polydextrose, June 2018', eu: polyolDocument.eu},
  },
]
