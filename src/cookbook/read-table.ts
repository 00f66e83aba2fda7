import type {BroughtTable} from '../food/brought-table.ts'
import {importTable} from '../food/import-table.ts'
import type {TableFault} from '../food/table-fault.ts'
import type {Problem} from './problem.ts'
import {type ReadingRuleId, reportInto} from './problems.ts'
import type {SourceText} from './sources.ts'

const ruleOfFault: Readonly<Record<TableFault['kind'], ReadingRuleId>> = {
  missing: 'key-present',
  duplicate: 'no-duplicate-key',
  'unknown column': 'known-key',
  unreadable: 'readable-value',
}

/**
 * Reads tables/<name>.tsv, or the rows of tables/<name>.foods that the cookbook names; rows that
 * cannot be used are left out and told.
 */
export function readTable({path, text}: SourceText): {
  readonly table: BroughtTable
  readonly problems: readonly Problem[]
} {
  const problems: Problem[] = []
  const report = reportInto(problems, path)
  const {table, faults} = importTable(text, tableName(path))
  for (const {kind, ...fault} of faults) report({ruleId: ruleOfFault[kind], ...fault})
  return {table, problems}
}

/** `tables/national.tsv` is the table `national`. */
function tableName(path: string): string {
  return path.slice(path.lastIndexOf('/') + 1).replace(/\.(?:tsv|foods)$/i, '')
}
