/** Whose law and wording labels follow: 21 CFR 101.9, or Regulation (EU) 1169/2011. */
export const labelRules = ['us', 'eu'] as const

export type LabelRules = (typeof labelRules)[number]
