import path from 'node:path'
import process from 'node:process'
import {type Examined, examine} from '../build.ts'
import {type AuditFinding, auditFoods} from '../check/audit/audit-foods.ts'
import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import {entryLines, type LabelEntry, withEntry} from '../cookbook/label-entry.ts'
import type {Problem} from '../cookbook/problem.ts'
import type {SourceText} from '../cookbook/sources.ts'
import {findingsText} from '../report/audit-text.ts'
import {message} from '../report/message.ts'
import {printable} from '../report/printable.ts'
import {textMessages} from '../report/text-report.ts'
import {askLabel} from './ask-label.ts'
import {paintFor} from './colour.ts'
import {createFiles} from './create-files.ts'
import {type ExaminedFolder, examinedFolder} from './examined-folder.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import {mendFiles} from './mend-files.ts'
import {remark, tell} from './output.ts'
import type {SharedOptions} from './shared-options.ts'
import {onTerminal} from './terminal-questions.ts'
import {today} from './today.ts'

const foodsFile = 'foods.yaml'

export interface LabelOptions extends SharedOptions {
  readonly content: string
  /** Written even where the figures do not fit each other. */
  readonly anyway: boolean
  readonly beside: Pick<LabelEntry, 'contains' | 'mayContain' | 'madeFrom' | 'sold'>
}

/**
 * Writes a packet's panel into foods.yaml, once it passes the checks.
 * @param lines of the panel as foods.yaml has them, `fat: 0.2 g`; none: they are asked for
 */
export async function foodsLabelCommand(
  name: string | undefined,
  lines: readonly string[],
  {content, anyway, beside, ...options}: LabelOptions,
): Promise<ExitCode> {
  const folder = await examinedFolder(content, options)
  const entry =
    name !== undefined && lines.length > 0
      ? {name, panel: panelOf(lines), ...beside}
      : await asked(name)
  const source = folder.read.sources.texts.find((text) => text.path === foodsFile)
  const text = withEntry(source?.text ?? '', entry)
  const found = findingsOf(entry, {folder, source, text})
  const paint = paintFor('stderr', options.color)
  for (const line of textMessages(
    found.errors.map((problem) => message(problem, folder.filePath)),
    paint,
  )) {
    tell(line)
  }
  for (const line of findingsText(found.odd, folder.filePath, paint)) tell(line)
  if (found.errors.length > 0 || (found.odd.length > 0 && !anyway)) {
    const hint =
      found.errors.length > 0 ? 'Mend that' : 'Mend that, or add --anyway where the packet says so'
    tell(`\nNot written. ${hint}:\n\n${entryLines(entry).map(printable).join('\n')}\n`)
    return exitCodes.errorsFound
  }
  if (source) await mendFiles(content, [{source, text}], options)
  else createFiles(content, new Map([[foodsFile, text]]))
  remark(`Wrote ${entry.name} into ${path.join(content, foodsFile)}\n`, options)
  return exitCodes.fine
}

async function asked(name: string | undefined): Promise<LabelEntry> {
  if (process.stdin.isTTY !== true) {
    throw new EnvironmentFailure(
      'There is no terminal to ask the figures on',
      'Give them with the call: scalepan foods label "plain curd" "per: 100 g" "fat: 0.2 g"',
    )
  }
  tell('As the packet prints it; an empty line for what it does not print.\n')
  return onTerminal((ask) => askLabel(ask, {today: today(), ...(name !== undefined && {name})}))
}

/** `fat: 0.2 g` as key and value; the day is today unless it is given. */
function panelOf(lines: readonly string[]): ReadonlyMap<string, string> {
  const panel = new Map<string, string>()
  for (const line of lines) {
    const colon = line.indexOf(':')
    const [key, value] = [line.slice(0, colon).trim(), line.slice(colon + 1).trim()]
    if (colon < 1 || value === '') {
      throw new EnvironmentFailure(
        `${line} is no line of a panel, expected name, colon and figure such as "fat: 0.2 g"`,
        'Quote each line',
      )
    }
    if (panel.has(key)) throw new EnvironmentFailure(`${key} is given twice, expected once`)
    panel.set(key, value)
  }
  return panel.has('read') ? panel : panel.set('read', today())
}

interface Appended {
  readonly folder: ExaminedFolder
  readonly source: SourceText | undefined
  readonly text: string
}

/** What the cookbook's checks say of the entry, and of what it does to the rest of the file. */
function findingsOf(
  {name}: LabelEntry,
  {folder, source, text}: Appended,
): {readonly errors: readonly Problem[]; readonly odd: readonly AuditFinding[]} {
  const {sources, problems} = folder.read
  const others = sources.texts.filter((each) => each !== source)
  const texts = [...others, {path: foodsFile, text}]
  const examined = examine({sources: {...sources, texts}, problems}, {today: today()})
  const from = source?.text.length ?? 0
  const isNew = ({file, place}: Pick<AuditFinding, 'file' | 'place'>): boolean =>
    file === foodsFile && (place?.start.offset ?? 0) >= from
  const errors = examined.problems.filter(
    (problem) => problem.severity === 'error' && isNew(problem),
  )
  if (errors.length === 0 && !isSafelyIn(name, folder.examined, examined)) {
    throw new EnvironmentFailure(
      `An entry cannot be put behind the end of ${foodsFile}`,
      'scalepan check says what is wrong with the file; an entry begins at the left edge of a line',
    )
  }
  const audit = auditFoods({
    cookbook: examined.cookbook,
    all: examined.computed,
    texts,
    today: today(),
  })
  return {errors, odd: audit.findings.filter(isNew)}
}

/** The entry became a food, and no food before it was lost. */
function isSafelyIn(name: string, before: Examined, after: Examined): boolean {
  const named = new Set(after.cookbook.foods.own.map((food) => food.name))
  return named.has(name) && before.cookbook.foods.own.every((food) => named.has(food.name))
}
