/** A value with hard limits: what a rounded figure can have been before it was rounded. */
export interface Span {
  readonly value: number
  readonly low: number
  readonly high: number
}

/** A figure written to a step: it was anywhere within half the step, and not below 0. */
export function spanOfRounded(value: number, increment: number): Span {
  return {value, low: Math.max(0, value - increment / 2), high: value + increment / 2}
}

export function spanSum(spans: Iterable<Span>): Span {
  let [value, low, high] = [0, 0, 0]
  for (const span of spans) {
    value += span.value
    low += span.low
    high += span.high
  }
  return {value, low, high}
}

/** `factor` × span, for a factor of either sign. */
export function spanTimes(span: Span, factor: number): Span {
  const [one, other] = [span.low * factor, span.high * factor]
  return {value: span.value * factor, low: Math.min(one, other), high: Math.max(one, other)}
}

/** How far apart two spans are; 0 when they meet. */
export function spanGap(left: Span, right: Span): number {
  return Math.max(0, left.low - right.high, right.low - left.high)
}

/** Product of two spans that are both 0 or more. */
export function spanProduct(left: Span, right: Span): Span {
  return {
    value: left.value * right.value,
    low: left.low * right.low,
    high: left.high * right.high,
  }
}
