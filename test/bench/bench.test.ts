/** The benchmark runs; what it measures is not tested, since machines differ. */

import {spawnSync} from 'node:child_process'
import {fileURLToPath} from 'node:url'
import {expect, test} from 'vitest'

const project = fileURLToPath(new URL('../..', import.meta.url))

test('the benchmark measures every program on a small cookbook and prints the ratios', {
  timeout: 240_000,
}, () => {
  const {status, stdout, stderr} = spawnSync(
    'npm',
    ['run', '--silent', 'bench', '--', '--sizes', '20', '--runs', '1'],
    {cwd: project, encoding: 'utf8'},
  )
  expect(`${status} ${stderr}`).toBe('0 writing a cookbook of 20 recipes\nrun 1 of 1, 20 recipes\n')
  for (const name of ['E', 'R', 'B', 'version', 'check', 'cold', 'unchanged', 'one edit']) {
    expect(stdout).toMatch(
      new RegExp(`^\\| 20 \\| ${name} \\| \\d+\\.\\d\\d \\| \\d+\\.\\d\\d \\| \\d+ \\|$`, 'mu'),
    )
  }
  expect(stdout).toMatch(/^\| 20 \| cold build, wall \/ B \| \d+\.\d\d \|/mu)
})

test('a size that the generator cannot make is refused', () => {
  const {status, stderr} = spawnSync('npm', ['run', '--silent', 'bench', '--', '--sizes', '30'], {
    cwd: project,
    encoding: 'utf8',
  })
  expect(status).toBe(1)
  expect(stderr).toContain('--sizes 30, expected multiples of 20 with commas between them')
})
