/** I/O: one module of mutated sources and the tests that may notice, to be loaded by a process. */

import {readFileSync} from 'node:fs'
import path from 'node:path'
import {pathToFileURL} from 'node:url'
import {build, type Plugin} from 'esbuild'

interface Whole {
  readonly project: string
  /** Test files, relative to the project. */
  readonly tests: readonly string[]
  /** Mutated text by file, relative to the project. */
  readonly mutated: ReadonlyMap<string, string>
  readonly outfile: string
}

/** Bundles tests and sources; where the module is loaded, `tryer.ts` listens for what to run. */
export async function bundleTests({project, tests, mutated, outfile}: Whole): Promise<void> {
  const imports = [...tests, 'test/mutation/tryer.ts'].map((file) => `import './${file}'`)
  await build({
    stdin: {contents: imports.join('\n'), resolveDir: project, loader: 'ts'},
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'esm',
    jsx: 'automatic',
    jsxImportSource: 'hastscript',
    outfile,
    logLevel: 'warning',
    alias: {vitest: path.join(project, 'test/mutation/test-stand-in.ts')},
    banner: {
      js: "import {createRequire as requireFrom} from 'node:module'; const require = requireFrom(import.meta.url);",
    },
    plugins: [prepared({project, tests, mutated})],
  })
}

/** Files know where they stand in the project, and not in the bundle; test files begin by name. */
function prepared({project, tests, mutated}: Omit<Whole, 'outfile'>): Plugin {
  const inTests = new Set(tests)
  return {
    name: 'prepared',
    setup(building) {
      building.onLoad({filter: /\.tsx?$/}, ({path: full}) => {
        const file = path.relative(project, full).replaceAll(path.sep, '/')
        const text = mutated.get(file) ?? readFileSync(full, 'utf8')
        const head = inTests.has(file)
          ? `import {beginFile as beginThisFile} from 'vitest'; beginThisFile(${JSON.stringify(file)});`
          : ''
        const url = JSON.stringify(pathToFileURL(full).href)
        return {
          contents: head + text.replaceAll('import.meta.url', url),
          loader: full.endsWith('x') ? 'tsx' : 'ts',
        }
      })
    },
  }
}
