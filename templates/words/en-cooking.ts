/** Texts of a recipe that is scaled, changed and cooked from. */
export const cooking = {
  title: 'How much to make',
  servings: 'Servings',
  batches: 'Batches',
  have: 'Grams at hand',
  haveOf: 'of',
  tin: {
    title: 'Tin at hand',
    shape: 'Shape',
    shapes: {round: 'round', square: 'square', rectangle: 'loaf, rectangle', ring: 'ring'},
    across: 'Across',
    second: 'Other side, tube',
    depth: 'Depth',
  },
  awake: 'Keep the screen on',
  again: 'As written',
  csv: 'Amounts and figures (CSV)',
  jsonld: 'For machines (JSON-LD)',
  csvColumns: {
    ingredient: 'Ingredient',
    grams: 'Grams',
    total: 'Whole batch',
    serving: 'One serving',
  },

  /** What the script of the page says; it fills in the {names}. */
  script: {
    copy: 'Copy as text',
    copied: 'Copied.',
    copyBelow: 'Mark the text below and copy it.',
    scaled: 'Every amount × {factor}; times and temperatures do not scale.',
    scaledServings: '{servings} instead of {written}',
    /** Of recipes about which something can be chosen. */
    choosing: {
      chosen:
        'Worked out {choices}. What is stated, declared, claimed and compared is the recipe as written.',
      with: 'with {name}',
      insteadOf: 'for {name} instead of {written}',
      putIn: 'Put {name} in',
      takeInstead: 'Take {name} instead',
    },
    tick: 'Done: {what}',
    servingCount: {one: '{count} serving', many: '{count} servings'},
    timers: 'Timers',
    startTimer: 'Start a timer: {time}',
    timerOf: '{time}, step {step}',
    timerEnded: 'Time is up',
    stopTimer: 'Stop',
    clock: 'Clock',
    startToReady: 'Start at {start}, ready at {ready}.',
  },
}
