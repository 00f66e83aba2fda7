import type {PhrasingContent, Root, Text} from 'mdast'
import {SKIP, visit} from 'unist-util-visit'
import {linkTarget} from '../cookbook/link-target.ts'
import {amountProperties, usedAmountText} from '../cookbook/method/used-amount.ts'
import type {IngredientLine, Recipe} from '../cookbook/recipe.ts'

/** Puts the amount of an ingredient behind the words that link to it, in place of the link. */
export function showAmounts(root: Root, {groups, path}: Recipe): void {
  const lines = new Map(
    groups.flatMap((group) => group.lines.map((line) => [line.anchor, line] as const)),
  )
  const addresses = definedAddresses(root)
  visit(root, (node, index, parent) => {
    if (node.type !== 'link' && node.type !== 'linkReference') return
    const address = node.type === 'link' ? node.url : addresses.get(node.identifier)
    const target = address === undefined ? undefined : linkTarget(address, path)
    const line = target?.kind === 'anchor' ? lines.get(target.anchor) : undefined
    if (!line || !parent || index === undefined) return
    const shown = withAmount(node.children, line)
    parent.children.splice(index, 1, ...shown)
    return [SKIP, index + shown.length]
  })
}

function definedAddresses(root: Root): ReadonlyMap<string, string> {
  const addresses = new Map<string, string>()
  visit(root, 'definition', ({identifier, url}) => {
    // The first definition of a label counts (CommonMark 4.7).
    if (!addresses.has(identifier)) addresses.set(identifier, url)
  })
  return addresses
}

function withAmount(words: readonly PhrasingContent[], line: IngredientLine): PhrasingContent[] {
  const amount: Text = {
    type: 'text',
    value: usedAmountText(line.amount.value),
    data: {hName: 'span', hProperties: amountProperties(line)},
  }
  const named = words.length > 0 ? words : [textNode(line.name.value)]
  return [...named, textNode(' ('), amount, textNode(')')]
}

function textNode(value: string): Text {
  return {type: 'text', value}
}
