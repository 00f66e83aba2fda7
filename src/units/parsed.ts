/** What a small parser makes of a writer's text: a value, or what it would have taken instead. */
export type Parsed<T> = {readonly ok: true; readonly value: T} | Refusal

export interface Refusal {
  readonly ok: false
  /** Goes on after "expected": "a weight such as `150 g`". */
  readonly expected: string
  /** Texts that would pass, best first. */
  readonly instead?: readonly string[]
  /** `instead` is what was meant, not a guess. */
  readonly isSure?: true
  /** How to mend it, where `expected` does not say it all. */
  readonly note?: string
}

export function parsed<T>(value: T): Parsed<T> {
  return {ok: true, value}
}

export function refused(expected: string, more: Omit<Refusal, 'ok' | 'expected'> = {}): Refusal {
  return {ok: false, expected, ...more}
}
