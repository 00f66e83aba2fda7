import type {SiteInput} from '../../src/site/render-site.ts'
import {at, cookbook, line, recipe, siteInput, weight} from './sample.ts'

/** Text that would run if any of it were taken for markup. */
const hostile = `"><script>alert(1)</script><img src=x onerror=alert(2)>'&amp;`

/** A cookbook whose every text is an attack. */
export function attack(): SiteInput {
  const dish = recipe('dish', {
    title: at(hostile),
    summary: at(hostile),
    serves: at(2),
    batch: at(weight(100)),
    oven: at(hostile),
    tags: [at(hostile)],
    image: at({path: hostile, alt: hostile}),
    groups: [
      {
        title: at(hostile),
        lines: [
          line('carrot', weight(50, {text: hostile}), {name: at(hostile), food: at('carrot')}),
          line('butter', weight(5), {uncounted: {because: at(hostile)}}),
        ],
      },
    ],
    method: {
      body: {type: 'root', children: [{type: 'text', value: hostile}]},
      ingredientLinks: [],
      passages: [{kind: 'step', text: hostile, place: at(0).place, stretches: [], lineStarts: []}],
      images: [],
      links: [],
    },
  })
  const plan = {
    slug: 'week',
    path: 'plans/week.md',
    title: at(hostile),
    summary: at(hostile),
    servings: [{recipe: at('dish'), servings: 2}],
    body: {type: 'root' as const, children: [{type: 'text' as const, value: hostile}]},
  }
  const page = {...plan, slug: 'about', path: 'pages/about.md'}
  const input = siteInput(
    {title: hostile, description: hostile, address: 'https://boathouse.example/'},
    {recipes: new Map([...cookbook.recipes, [dish.slug, dish]]), plans: [plan], pages: [page]},
  )
  return {
    ...input,
    rules: [{id: 'x', severity: 'note', summary: hostile, why: hostile, source: hostile}],
    problems: [{ruleId: 'x', severity: 'note', file: hostile, reason: hostile, note: hostile}],
  }
}
