/** Texts of the cards of all recipes. */
export const cards = {
  title: 'Cards of all recipes',
  sheets: 'Cards on sheets',
  sheetsIntro: (size: string) =>
    `Cards of ${size}, front and back side by side. Print at actual size on one side of the paper, cut along the lines, fold at the dots.`,
  cautionsFrom: 'Sources: its page. Local rules and licensed practice come first.',
}

/** Texts of the cookbook as one document. */
export const book = {
  link: 'The whole cookbook, to print',
  label: 'Cookbook',
  print:
    'Print from the browser’s own menu. Page numbers in the contents and the index come with `scalepan print cookbook`.',
  contents: 'Contents',
  untagged: 'Recipes',
  figures: 'Table of figures',
  figuresServing: 'One serving',
  figures100g: 'Per 100 g',
  allergens: 'Table of allergens',
  allergensIntro:
    'c: contains. o: only in what is optional or may stand instead. t: may contain traces, as the packets say. An empty field: no ingredient is known to contain it. Recipes marked * have ingredients whose allergens nobody stated; they are named below.',
  contains: 'c',
  optional: 'o',
  traces: 't',
  notStated: '*',
  index: 'Index of ingredients',
  checked: 'What the check of the figures found',
  tally: (stated: number, recipes: number) =>
    `${stated} figures of ${recipes} recipes are stated and were compared.`,
  page: 'Page',
  onPage: (page: string) => `page ${page}`,
  sources: 'Sources',
  foodSources: 'Where the figures of each food come from',
  cautionSources: 'Where the cautions come from',
}
