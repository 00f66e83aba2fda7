/** Texts of the page that shows what the other pages are made of. */
export const stylePage = {
  title: 'Style',
  intro:
    'What these pages are made of: enamel ware, a white body with a blue rim, printed in black. Every sign also works in one ink, and nothing is loaded from elsewhere.',
  type: 'Type',
  typeText:
    'Names, headings and figures to read at arm’s length are set in the print face, what explains them in the plain one. Both are faces of the reader’s own machine.',
  note: 'Smaller and softer: sources, conditions, what is said beside.',
  colours: 'Colours',
  colour: {
    paper: 'Paper: the ground of every page',
    tint: 'Tint: what is pointed at',
    ink: 'Ink: text',
    soft: 'Soft: notes and labels',
    rule: 'Rule: between rows',
    rim: 'Rim: headings, links, the spine of a list, bars',
    band: 'Band: the head of the page',
  },
  controls: 'Controls',
  button: 'A button',
  field: 'A field',
  choice: 'A choice',
  shownOn: 'Shown on',
  list: 'A list to weigh by',
  card: 'A card',
}
