/** What can keep a recipe from being computed, or a setting from making sense, by rule id. */
export const computingRules = {
  'unknown-food': {
    severity: 'error',
    summary: 'Every ingredient is a food or component that the cookbook knows.',
    why: 'A guess at another food would change the figures without a sign.',
  },
  'unknown-component': {
    severity: 'error',
    summary: 'Every component is a recipe of the cookbook.',
    why: 'Its figures are computed from its own ingredients, so they must be there.',
  },
  'unknown-measure': {
    severity: 'error',
    summary: 'A volume or a count is one whose weight the food knows.',
    why: 'A cup of one food weighs three times a cup of another; without a weight there is no figure.',
  },
  'component-weight': {
    severity: 'error',
    summary: 'A component used by weight has a yield.',
    why: 'How much of it 100 g are can only be told when the finished batch was weighed.',
  },
  'yield-factor-known': {
    severity: 'error',
    summary: 'A yield factor is a number, or one that is published for the food.',
    why: 'A guess at what cooking takes away would change every figure per 100 g.',
  },
  'retention-once': {
    severity: 'error',
    summary: 'Losses in cooking are taken off raw figures, once.',
    why: 'The figures of a cooked food have the losses in them already.',
  },
  'poured-off-held': {
    severity: 'error',
    summary: 'No more fat or liquid is poured off than an ingredient holds.',
    why: 'The rest would be taken from other ingredients, and figures could fall below nothing.',
  },
  'component-loop': {
    severity: 'error',
    summary: 'No recipe contains itself, not even by way of others.',
    why: 'Its figures would have to be known before they can be computed.',
  },
  'component-nesting': {
    severity: 'error',
    summary: 'Components stand within one another 50 levels deep at most.',
    why: 'No kitchen nests deeper; a cookbook made to exhaust the computation stops here.',
  },
  'recipe-computed': {
    severity: 'error',
    summary: 'What a recipe uses can be understood.',
    why: 'Without it nothing is computed, and nothing checked: silence would look like approval.',
  },
  'unused-acceptance': {
    severity: 'warning',
    summary: 'A finding that a recipe accepts does occur.',
    why: 'An acceptance that outlives its finding would silence the next one.',
  },
  'known-rule': {
    severity: 'error',
    summary: 'A severity in cookbook.yaml is for a rule that exists and may be changed.',
    why: 'A misspelt rule would go on as before, and nobody would see that.',
  },
} as const
