import {correction, generate} from 'lean-qr'
import {expect, test} from 'vitest'
import {qrCode} from '../../templates/parts/qr-code.ts'
import {sampleSite} from './sample.ts'
import {byTag} from './tree.ts'

test('the strokes of a code cover exactly its dark modules, with four of white around', () => {
  const address = 'https://boathouse.example/kitchen/recipes/barley-pot/'
  const drawn = qrCode(sampleSite(), address, 'The page')
  const [path] = byTag(drawn, 'path')
  const dark = new Set<string>()
  for (const [, x, y, length] of String(path?.properties.d).matchAll(/M(\d+) (\d+)\.5h(\d+)/g)) {
    for (let step = 0; step < Number(length); step++) dark.add(`${Number(x) + step},${y}`)
  }
  const code = generate(address, {minCorrectionLevel: correction.M})
  for (let y = 0; y < code.size; y++) {
    for (let x = 0; x < code.size; x++) expect(dark.has(`${x},${y}`)).toBe(code.get(x, y))
  }
  const side = code.size + 8
  expect(drawn.properties.viewBox).toBe(`-4 -4 ${side} ${side}`)
})
