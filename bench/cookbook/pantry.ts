/** Foods of the built-in table that generated recipes cook with, and how a method calls them. */

/** What a recipe can weigh: a name on its list, the word in its method, grams for a batch of four. */
export interface Staple {
  readonly name: string
  readonly word: string
  readonly leastGrams: number
  readonly mostGrams: number
}

type Staples = readonly [Staple, ...Staple[]]

const staples = (text: string): readonly Staple[] =>
  text
    .trim()
    .split('\n')
    .map((line) => {
      const [name = '', word = '', least, most] = line.split('|').map((part) => part.trim())
      return {name, word, leastGrams: Number(least), mostGrams: Number(most)}
    })

function atLeastOne([first, ...others]: readonly Staple[]): Staples {
  if (!first) throw new Error('A shelf of the pantry is empty')
  return [first, ...others]
}

export const fats = atLeastOne(
  staples(`
    olive oil | oil | 10 | 40
    rapeseed oil | oil | 10 | 40
    sunflower oil | oil | 10 | 40
  `),
)

export const vegetables = staples(`
  onion | onion | 80 | 240
  carrot | carrots | 100 | 300
  celery | celery | 60 | 180
  leek | leeks | 100 | 300
  courgette | courgettes | 150 | 400
  aubergine | aubergine | 150 | 400
  butternut squash | squash | 200 | 600
  cauliflower | cauliflower | 150 | 500
  broccoli | broccoli | 150 | 400
  fennel bulb | fennel | 100 | 250
  cabbage | cabbage | 150 | 400
  parsnip | parsnips | 100 | 300
  swede | swede | 150 | 400
  spinach | spinach | 80 | 250
`)

export const bases = atLeastOne(
  staples(`
    pearl barley | barley | 160 | 280
    red lentils | lentils | 160 | 300
    lentils | lentils | 160 | 300
    bulgur | bulgur | 160 | 280
    quinoa | quinoa | 160 | 260
    millet | millet | 160 | 260
    potato | potatoes | 500 | 900
    sweet potato | sweet potatoes | 500 | 900
  `),
)

export const seasonings = staples(`
  ground cumin | cumin | 2 | 6
  ground coriander | coriander | 2 | 6
  paprika | paprika | 2 | 8
  turmeric | turmeric | 1 | 4
  dried oregano | oregano | 1 | 4
  thyme | thyme | 1 | 6
  rosemary | rosemary | 1 | 5
  bay leaf | bay | 1 | 2
  mustard seed | mustard seeds | 2 | 6
`)

export const finishes = staples(`
  parsley | parsley | 5 | 30
  lemon juice | lemon juice | 10 | 50
  chives | chives | 5 | 20
  mint | mint | 5 | 20
  dill | dill | 5 | 20
  cider vinegar | vinegar | 5 | 30
`)
