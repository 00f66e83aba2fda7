import type {Severity} from '../cookbook/problem.ts'

/** Colours and links for a terminal; each leaves the text alone where there are none. */
export interface Paint {
  readonly bold: (text: string) => string
  readonly dim: (text: string) => string
  readonly red: (text: string) => string
  readonly yellow: (text: string) => string
  readonly cyan: (text: string) => string
  /** Leads to a file, as the writer's paths name it. */
  readonly link: (text: string, file: string) => string
}

const same = (text: string) => text

/** For where there is no terminal. */
export const plainPaint: Paint = {
  bold: same,
  dim: same,
  red: same,
  yellow: same,
  cyan: same,
  link: same,
}

/** A severity in its colour; the word itself always says it. */
export function paintedSeverity(severity: Severity, paint: Paint): string {
  switch (severity) {
    case 'error':
      return paint.red('error')
    case 'warning':
      return paint.yellow('warning')
    case 'note':
      return paint.cyan('note')
  }
}
