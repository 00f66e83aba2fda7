/** Texts of every list; those with {names} in them are filled in, by pages and by their scripts. */
export const list = {
  makeFirst: 'To make',
  ofBatch: '{percent} % of a batch',
  optional: 'and {amount} if wanted',
  onlyOptional: 'if wanted',
  pieces: 'about {count} {size}',
  packs: '{count} × {weight}',
  left: '{amount} left over',
  money: '{amount} {currency}',
  cost: 'The packs cost {money}.',
  costAtLeast: 'The packs cost at least {money}: not every food has a price.',
  empty: 'Choose servings, and the list stands here.',
  count: '{count} to buy',
}

export const shopping = {
  title: 'Shopping list',
  intro:
    'Weights are as bought, with peel and bone, rounded up. Stocks, doughs and sauces are taken apart into what they are made from.',
  choose: 'Choose servings',
  find: 'Find a recipe',
  result: 'To buy',
  plans: 'Lists for the plans',
  noPlans:
    'This cookbook has no plans. With scripts on, the servings of any recipe can be chosen here.',
  clear: 'Start again',
  offline: 'After one visit this page also opens without a network.',
  own: 'Something else to buy',
  add: 'Add',
  copyList: 'Copy the list',
  copyLink: 'Copy a link to it',

  /** What the script of the page says. */
  script: {
    batches: 'batches',
    more: 'and {count} more: write more of the name',
    noneFound: 'No recipe is called so.',
    fetching: 'Fetching …',
    failed: 'Cannot be fetched: is there a network?',
    incomplete: 'Not on the list, as it cannot be fetched: {names}.',
    own: 'Added by hand',
    remove: 'Take {name} off the list',
    had: 'At home: {name}',
    copied: 'Copied.',
    copyBelow: 'Mark the text below and copy it.',
  },
}
