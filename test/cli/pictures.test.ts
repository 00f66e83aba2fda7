import {mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import path from 'node:path'
import {fileURLToPath} from 'node:url'
import {afterAll, beforeAll, expect, test} from 'vitest'
import {loadJpegCodec} from '../../src/site/pictures/jpeg-codec.ts'
import {bundledCommand} from './command.ts'

const scalepan = bundledCommand()
let folder = ''

beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), 'scalepan-pictures-'))
  mkdirSync(path.join(folder, 'content/images'), {recursive: true})
  mkdirSync(path.join(folder, 'content/recipes'))
  // The codec is a package beside the command, as an installation has it.
  const packages = fileURLToPath(new URL('../../node_modules', import.meta.url))
  symlinkSync(packages, path.join(path.dirname(scalepan.entry()), 'node_modules'))
  const [width, height] = [1100, 60]
  const data = new Uint8ClampedArray(width * height * 4).fill(120)
  const photograph = await (await loadJpegCodec()).write({width, height, data})
  writeFileSync(path.join(folder, 'content/images/bowl.jpg'), photograph)
  writeFileSync(path.join(folder, 'content/recipes/tea.md'), '---\ntitle: Tea\n---\n')
})

afterAll(() => rmSync(folder, {recursive: true, force: true}))

test('smaller pictures are made once, and what is there stays', () => {
  const first = scalepan.run(['pictures'], {cwd: folder})
  expect(first).toMatchObject({code: 0, stderr: '2 pictures made, of 1 file in images/\n'})
  expect(first.stdout.split('\n').map((line) => line.split('  ')[0])).toEqual([
    path.join('content/images/bowl.800.jpg'),
    path.join('content/images/bowl.400.jpg'),
    '',
  ])
  const file = path.join(folder, 'content/images/bowl.400.jpg')
  writeFileSync(file, 'mine')
  const again = scalepan.run(['pictures'], {cwd: folder})
  expect(again).toMatchObject({code: 0, stdout: ''})
  expect(readFileSync(file, 'utf8')).toBe('mine')
})

test('a picture that cannot be read is named', () => {
  const broken = path.join(folder, 'content/images/broken.jpg')
  const head = [0xff, 0xd8, 0xff, 0xc0, 0, 11, 8, 8, 0, 8, 0, 1, 1, 0x11, 0, 0xff, 0xda, 0, 2]
  writeFileSync(broken, new Uint8Array(head))
  const {code, stderr} = scalepan.run(['pictures'], {cwd: folder})
  expect(code).toBe(1)
  expect(stderr).toContain('images/broken.jpg cannot be read')
})
