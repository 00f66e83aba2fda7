import {type ChildProcess, spawn} from 'node:child_process'
import {once} from 'node:events'
import {mkdir, mkdtemp, rm, writeFile} from 'node:fs/promises'
import {createServer} from 'node:net'
import {tmpdir} from 'node:os'
import path from 'node:path'
import process from 'node:process'
import {afterEach, beforeEach, describe, expect, test} from 'vitest'
import {broken, porridge} from '../preview/kitchen.ts'
import {bundledCommand, everyByte} from './command.ts'

const command = bundledCommand()

let folder = ''
let child: ChildProcess | undefined

beforeEach(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'scalepan-preview-'))
  await mkdir(path.join(folder, 'content/recipes'), {recursive: true})
  await writeFile(path.join(folder, 'content/cookbook.yaml'), 'title: Boathouse\n')
  await writeFile(recipeFile(), porridge)
})

afterEach(async () => {
  child?.kill('SIGKILL')
  child = undefined
  await rm(folder, {recursive: true})
})

function recipeFile(): string {
  return path.join(folder, 'content/recipes/porridge.md')
}

interface Running {
  readonly said: () => string
  /** Settles with the first match of what the command says. */
  readonly says: (words: RegExp) => Promise<RegExpExecArray>
}

function started(...args: readonly string[]): Running {
  let text = ''
  const running = spawn(process.execPath, [command.entry(), 'preview', ...args], {cwd: folder})
  child = running
  for (const stream of [running.stdout, running.stderr]) {
    stream.on('data', (chunk) => {
      text += chunk
    })
  }
  return {
    said: () => text,
    async says(words) {
      for (;;) {
        const match = words.exec(text)
        if (match) return match
        if (running.exitCode !== null) throw new Error(`It ended and said: ${text}`)
        await Promise.race([
          once(running.stdout, 'data'),
          once(running.stderr, 'data'),
          once(running, 'exit'),
        ])
      }
    },
  }
}

describe('preview', () => {
  test('shows every save, writes nothing, and ends when asked', async () => {
    const before = everyByte(folder)
    const {says} = started()
    const [, address = ''] = await says(/Preview at (http:\/\/127\.0\.0\.1:\d+\/)\n/u)
    const page = `${address}recipes/porridge/`
    expect(await (await fetch(page)).text()).not.toContain('class="finding"')
    expect(everyByte(folder)).toEqual(before)
    await writeFile(recipeFile(), porridge.replace('190 kcal', '290 kcal'))
    await says(/content\/recipes\/porridge\.md:8:\d+.*290 kcal/su)
    await says(/Pages made: 1 error, 0 other findings\./u)
    expect(await (await fetch(page)).text()).toContain('class="finding"')
    await writeFile(recipeFile(), broken)
    await says(/porridge\.md:\d+:\d+(?!.*290 kcal).*Pages made: [1-9]/su)
    child?.kill('SIGINT')
    const [code] = child ? await once(child, 'exit') : []
    expect(code).toBe(0)
  })

  test('a port that is taken is told', async () => {
    const other = createServer().listen(0, '127.0.0.1')
    await once(other, 'listening')
    const address = other.address()
    const port = typeof address === 'object' ? String(address?.port) : ''
    const ended = command.run(['preview', '--port', port], {cwd: folder})
    other.close()
    expect(ended.code).toBe(2)
    expect(ended.stderr).toContain(`Port ${port} is in use`)
  })

  test('others are let in only by an address of this machine, with a warning', async () => {
    const ended = command.run(['preview', '--host', 'boathouse.example'], {cwd: folder})
    expect(ended.code).toBe(2)
    expect(ended.stderr).toContain('boathouse.example is no address of this machine')
    const {says, said} = started('--host', '0.0.0.0')
    const [, port = ''] = await says(/Preview at http:\/\/0\.0\.0\.0:(\d+)\//u)
    expect(said()).toContain('Warning: everybody who can reach 0.0.0.0 can read this preview')
    expect((await fetch(`http://127.0.0.1:${port}/`)).status).toBe(200)
    const rebound = await fetch(`http://127.0.0.1:${port}/`, {
      headers: {Origin: 'http://a.example'},
    })
    expect(rebound.status).toBe(403)
  })
})
