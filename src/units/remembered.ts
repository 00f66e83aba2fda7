/**
 * A function that is worked out once for each object it is asked about. For objects that never
 * change, and for answers that several rules or pages want; what is asked about is not kept alive.
 */
export function remembered<Subject extends object, Answer>(
  workOut: (subject: Subject) => Answer,
): (subject: Subject) => Answer {
  const known = new WeakMap<Subject, {readonly answer: Answer}>()
  return (subject) => {
    const found = known.get(subject)
    if (found) return found.answer
    const answer = workOut(subject)
    known.set(subject, {answer})
    return answer
  }
}

/** Texts whose answers are kept at a time: those of a long recipe, which rules read in turn. */
const mostTexts = 512

/**
 * A function of a text that is worked out once while the text is being looked at again and again.
 * @param most texts whose answers are kept; all are forgotten when there are more
 */
export function rememberedText<Answer>(
  workOut: (text: string) => Answer,
  most: number = mostTexts,
): (text: string) => Answer {
  const known = new Map<string, Answer>()
  return (text) => {
    const found = known.get(text)
    if (found !== undefined) return found
    if (known.size >= most) known.clear()
    const answer = workOut(text)
    known.set(text, answer)
    return answer
  }
}

/** What is made when it is first asked for, and then kept. */
export function once<T>(make: () => T): () => T {
  let kept: {readonly value: T} | undefined
  return () => {
    kept ??= {value: make()}
    return kept.value
  }
}
