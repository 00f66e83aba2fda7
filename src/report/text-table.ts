/** Columns in plain text: the first as it is written, the others set to the right. */
export function textTable(rows: readonly (readonly string[])[]): readonly string[] {
  const widths: number[] = []
  for (const row of rows) {
    for (const [column, cell] of row.entries()) {
      widths[column] = Math.max(widths[column] ?? 0, width(cell))
    }
  }
  return rows.map((row) =>
    row
      .map((cell, column) => {
        const gap = ' '.repeat((widths[column] ?? 0) - width(cell))
        return column === 0 ? cell + gap : gap + cell
      })
      .join('  ')
      .trimEnd(),
  )
}

/** Characters, not code units: a letter with its accent in two is still one wide. */
function width(cell: string): number {
  return cell.normalize('NFC').replace(/\p{M}/gu, '').length
}
