import type {Parsed} from '../units/parsed.ts'

/** Puts a question to the writer and gives the line they answer with. */
export type Ask = (question: string) => Promise<string>

/** One thing to ask. */
export interface Question {
  /** Key of the file that the answer goes under. */
  readonly key: string
  readonly text: string
  /** Whether it can be passed over with an empty line. */
  readonly isOptional: boolean
  /** The answer as it is to be written, or what was expected. */
  readonly read: (answer: string) => Parsed<string>
}

/**
 * Asks until the answer can be read.
 * @returns undefined where the writer passed the question over
 */
export async function answer<T>(
  ask: Ask,
  {
    text,
    isOptional,
    read,
  }: Pick<Question, 'text' | 'isOptional'> & {
    readonly read: (answer: string) => Parsed<T>
  },
): Promise<T | undefined> {
  let question = `${text}: `
  for (;;) {
    const written = (await ask(question)).trim()
    if (written === '' && isOptional) return undefined
    const value = read(written)
    if (value.ok) return value.value
    question = `  Expected ${value.expected}. ${text}: `
  }
}
