import type {Reporter, TestModule} from 'vitest/node'

/** Ends the log with one plain line, `N passed, N failed`, that a continuous-integration page can read. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    let passed = 0
    let failed = 0
    let skipped = 0
    for (const module of modules) {
      // A file that cannot be loaded has no tests of its own, and must not pass for that.
      if (module.errors().length > 0) failed++
      for (const test of module.children.allTests()) {
        const {state} = test.result()
        if (state === 'passed') passed++
        else if (state === 'failed') failed++
        else skipped++
      }
    }
    process.stdout.write(
      `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}\n`,
    )
  }
}
