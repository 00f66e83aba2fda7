import {readFileSync} from 'node:fs'
import {expect, test} from 'vitest'
import {parse} from 'yaml'
import {program} from '../../src/cli/program.ts'

const text = readFileSync(new URL('../../docs/in-a-pipeline.md', import.meta.url), 'utf8')
const blocks = [...text.matchAll(/```yaml\n(.*?)```/gsu)].map(([, block = '']) => block)

test('every YAML in the guide is YAML', () => {
  expect(blocks.length).toBeGreaterThan(4)
  for (const block of blocks) expect(() => parse(block)).not.toThrow()
})

test('the workflow has what a workflow needs', () => {
  // GitHub Docs, "Workflow syntax for GitHub Actions": on, jobs.<id>.runs-on, and steps that use or run.
  const {on, jobs} = parse(blocks[0] ?? '')
  expect(Object.keys(on)).toEqual(['push', 'pull_request'])
  expect(jobs.check['runs-on']).toBe('ubuntu-latest')
  for (const step of jobs.check.steps) {
    expect(Object.keys(step).filter((key) => key === 'uses' || key === 'run')).toHaveLength(1)
  }
})

test('every call in the guide is one the command takes', () => {
  const calls = [...text.matchAll(/(?:npx |`)scalepan ([a-z]+)([^\n`>]*)/gu)].map(
    ([, name = '', rest = '']) => ({name, options: rest.match(/--[a-z-]+/gu) ?? []}),
  )
  expect(calls.length).toBeGreaterThan(5)
  const commands = program(() => undefined).commands
  for (const {name, options} of calls) {
    const command = commands.find((each) => each.name() === name)
    expect(command?.name()).toBe(name)
    const known = command?.options.map(({long}) => long) ?? []
    for (const option of options) expect(known).toContain(option)
  }
})
