import {defineConfig} from 'vitest/config'

export default defineConfig({
  oxc: {jsx: {runtime: 'automatic', importSource: 'hastscript'}},
  test: {
    include: ['test/**/*.test.ts'],
    reporters: ['default', './test/closing-line.ts'],
    maxWorkers: 2,
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
})
