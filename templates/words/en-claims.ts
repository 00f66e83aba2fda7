/** Texts about what a page says of nutrition. */
export const claims = {
  title: 'Claims',
  lawUs:
    'By 21 CFR 101.54–.62, the serving standing in for the reference amount. Where food is sold, local law decides.',
  lawEu: 'By Regulation (EC) 1924/2006. Where food is sold, local law decides.',
}
