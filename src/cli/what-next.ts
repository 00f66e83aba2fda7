import {existsSync} from 'node:fs'

/** What somebody can do who typed `scalepan` and nothing more. */
export function whatNext(): string {
  return existsSync('content') ? withCookbook : withoutCookbook
}

const withCookbook = `There is a cookbook in content/. Next:

  scalepan check              is every stated figure still right?
  scalepan explain RECIPE     where a recipe's figures come from
  scalepan build              check, then write site/
  scalepan new recipe TITLE   start another recipe
  scalepan --help             everything else
`

const withoutCookbook = `There is no cookbook here yet (no folder named content). Next:

  scalepan new cookbook DIR   start one that passes its checks
  scalepan --help             everything else

If your cookbook is in another folder, name it: scalepan check --content DIR
`
