import {readFileSync} from 'node:fs'
import path from 'node:path'
import {expect, test} from 'vitest'
import {mendFiles} from '../../src/cli/mend-files.ts'
import {temporaryFolder} from '../temporary-folder.ts'

test('a file that was saved since it was read is left as it was saved', async () => {
  const folder = temporaryFolder({'recipes/pot.md': 'saved meanwhile'})
  const source = {path: 'recipes/pot.md', text: 'as it was read'}
  await expect(mendFiles(folder, [{source, text: 'mended'}], {quiet: false})).rejects.toMatchObject(
    {
      name: 'EnvironmentFailure',
      message: expect.stringContaining('was changed while it was checked; it was left alone'),
    },
  )
  expect(readFileSync(path.join(folder, 'recipes/pot.md'), 'utf8')).toBe('saved meanwhile')
})
