import fc from 'fast-check'

/** One slip in a text: something goes, something else stands in its stead. */
interface Slip {
  /** Where, as a share of the text's length. */
  readonly at: number
  readonly without: number
  readonly put: (text: string) => string
}

/** What a slip of the pen leaves, or somebody who wants the reader to fall over. */
const scrap = fc.constantFrom(
  ...[':', ' ', '\n', '\t', '\r', '-', '"', "'", '[', ']', '{', '}', '&a', '*a', '!!set', '#', '|'],
  ...['?', ',', '%', '@', '.nan', '.inf', '-1', '1e999', '½', '\u2028', '🍋', '__proto__', '---\n'],
  ...['<<: ', 'title: x\n', '  ', '- ', ': ', '1,5 kg', '...\n', '0', 'null', '~', '\uFEFF', '\0'],
  ...['`', '*', '_', '> ', '1. ', '![', '](', '<', '&#0;', '\\', '(', ')', '|', '\u202E', '\ud800'],
  ...['9'.repeat(40), 'x'.repeat(300), '[ '.repeat(30), '> '.repeat(30), '*'.repeat(40), '–', '°'],
)

const put: fc.Arbitrary<Slip['put']> = fc.oneof(
  {weight: 6, arbitrary: scrap.map((added) => () => added)},
  {weight: 2, arbitrary: fc.constant(() => '')},
  {weight: 1, arbitrary: fc.string({unit: 'binary', maxLength: 8}).map((added) => () => added)},
  // A piece of the text itself: lines and keys that stand twice, or elsewhere.
  {
    weight: 3,
    arbitrary: fc.tuple(share(), fc.nat(60)).map(([from, length]) => (text: string) => {
      const start = Math.floor(from * text.length)
      return text.slice(start, start + length)
    }),
  },
)

function share(): fc.Arbitrary<number> {
  return fc.nat(9_999).map((part) => part / 10_000)
}

const slip: fc.Arbitrary<Slip> = fc.record({
  at: share(),
  without: fc.oneof(fc.constant(0), fc.nat(3), fc.nat(40)),
  put,
})

/** One of the texts, with a few slips in it. */
export function slipped(texts: readonly string[], most = 5): fc.Arbitrary<string> {
  return fc
    .tuple(fc.constantFrom(...texts), fc.array(slip, {minLength: 1, maxLength: most}))
    .map(([sound, slips]) =>
      slips.reduce((text, {at, without, put: added}) => {
        const start = Math.floor(at * text.length)
        return text.slice(0, start) + added(text) + text.slice(start + without)
      }, sound),
    )
}
