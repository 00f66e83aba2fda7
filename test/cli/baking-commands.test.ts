import {expect, test} from 'vitest'
import {bundledCommand} from './command.ts'

const {run} = bundledCommand()
const here = {cwd: process.cwd()}

test('pan says by how much to multiply, by area and by volume', () => {
  const {code, stdout} = run(['pan', '8 in square, 2 in deep', '9 x 13 in, 3 in deep'], here)
  expect(code).toBe(0)
  // 9 × 13 ÷ 8² = 1.83 by area; × 3/2 = 2.74 by volume.
  expect(stdout).toContain('× 1.83 for the same depth')
  expect(stdout).toContain('× 2.74 filled to the same share')
})

test('pan refuses what is no tin, and shows what is', () => {
  const {code, stderr} = run(['pan', 'a big one', '20 cm round'], here)
  expect(code).toBe(2)
  expect(stderr).toContain('a big one is no tin')
  expect(stderr).toContain('24 cm round')
})

test('water is as warm as the sum of bakery schools has it, and friction turns it round', () => {
  const common = ['--room', '65', '--flour', '65']
  const straight = run(['water', '--dough', '75', '--friction', '8', ...common], here)
  expect(straight.stdout).toBe('Water at 87.0 degrees\n')
  const friction = run(['water', '--dough', '75', '--used', '87', ...common], here)
  expect(friction.stdout).toContain('Mixing added 8.0 degrees')
})

test('water warns of ice and of heat that kills yeast', () => {
  const cold = run(['water', '--dough', '24', '--room', '38', '--flour', '36'], here)
  expect(cold.stderr).toContain('use ice')
  const hot = run(['water', '--dough', '30', '--room', '10', '--flour', '8'], here)
  expect(hot.stderr).toContain('kill yeast')
})

test('degrees are numbers', () => {
  const {code, stderr} = run(['water', '--dough', 'warm', '--room', '20', '--flour', '20'], here)
  expect(code).toBe(2)
  expect(stderr).toContain('number of degrees')
})
