import type {ClaimsReport} from './explanation.ts'
import {printable} from './printable.ts'

/** Claims that are made, those that could be, and what has to stand beside them. */
export function claimRows({made, possible, sentences}: ClaimsReport): readonly string[] {
  return [
    ...made.map(({claim, outcome}) => printable(`made: ${claim}, ${outcome}`)),
    ...(possible.length > 0
      ? [`could be made: ${possible.map(({claim}) => claim).join(', ')}`]
      : ['no other could be made']),
    ...sentences.map((text) => `beside it: ${text}`),
  ]
}

/** Whose conditions they are, for the heading. */
export function claimsHeading({rules}: ClaimsReport): string {
  return rules === 'us'
    ? 'Claims by 21 CFR 101.54–.62, a serving standing in for the reference amount'
    : 'Claims by Regulation (EC) 1924/2006'
}
