import type {Command} from 'commander'

const help = `
Your editor starts it; docs/editors.md says how. Findings, completion and the rest are for the
files of a cookbook folder: recipes/*.md, plans/*.md, pages/*.md, foods.yaml, cookbook.yaml.
`

/** The language server. */
export function addEditor(root: Command): void {
  root
    .command('lsp')
    .summary('serve an editor: findings, completion and figures while you write')
    .description('Serves an editor by the Language Server Protocol.')
    .requiredOption('--stdio', 'speak on standard input and output, the one way there is')
    .addHelpText('after', help)
    .action(async () => {
      const {lspCommand} = await import('./lsp-command.ts')
      lspCommand()
    })
}
