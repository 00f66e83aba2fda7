/**
 * Stands in for vitest where mutants are tried: the same tests are only registered, to be run
 * thousands of times in one process. What a test asks for that is not here fails it, and with it
 * the run; no test is passed over in silence.
 */

import {readFileSync} from 'node:fs'
import {chai, JestAsymmetricMatchers, JestChaiExpect, JestExtend} from '@vitest/expect'

type Act = () => unknown
type Body = (...values: readonly unknown[]) => unknown

/** A test, with what runs before and after it. */
export interface RegisteredTest {
  readonly name: string
  readonly run: () => Promise<void>
}

interface Scope {
  readonly name: string
  readonly before: Act[]
  readonly after: Act[]
}

/** In the order of the files, and in the order of each file. */
export const registered: RegisteredTest[] = []

let scopes: readonly Scope[] = []

/** Called at the head of every test file: what follows is registered under its name. */
export function beginFile(name: string): void {
  scopes = [{name, before: [], after: []}]
}

function describeOne(name: string, body: Act): void {
  const outside = scopes
  scopes = [...outside, {name, before: [], after: []}]
  body()
  scopes = outside
}

function testOne(name: string, body: Act): void {
  const around = scopes
  const whole = [...around.map((scope) => scope.name), name].join(' > ')
  registered.push({
    name: whole,
    async run() {
      try {
        for (const act of around.flatMap(({before}) => before)) await act()
        await body()
      } finally {
        for (const act of around.flatMap(({after}) => after)) await act()
      }
    },
  })
}

/** A row that is a list gives the arguments, anything else is the only one. */
function each(register: (name: string, body: Act) => void) {
  return (rows: readonly unknown[]) => (name: string, body: Body) => {
    rows.forEach((row, index) => {
      const values: readonly unknown[] = Array.isArray(row) ? row : [row]
      register(`${name} [${index}]`, () => body(...values))
    })
  }
}

const skipIf = (isSkipped: boolean) => (isSkipped ? () => undefined : testOne)

export const test = Object.assign(testOne, {each: each(testOne), skipIf})
export const describe = Object.assign(describeOne, {each: each(describeOne)})

// What is made once for a file is made for each test: a mutant has to be in it.
export const beforeAll = (act: Act) => scopes.at(-1)?.before.push(act)
export const beforeEach = beforeAll
export const afterAll = (act: Act) => scopes.at(-1)?.after.push(act)
export const afterEach = afterAll

chai.use(JestExtend)
chai.use(JestChaiExpect)
chai.use(JestAsymmetricMatchers)
chai.util.addMethod(
  chai.Assertion.prototype,
  'toMatchFileSnapshot',
  function matchFile(this: Chai.AssertionStatic, file: string) {
    chai.assert.strictEqual(chai.util.flag(this, 'object'), readFileSync(file, 'utf8'))
  },
)

export const expect = chai.expect
