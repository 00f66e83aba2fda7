import type {Element, Nodes} from 'hast'
import {visit} from 'unist-util-visit'

/** What a reader sees of a tree, with single spaces. */
export function textOf(tree: Nodes): string {
  const texts: string[] = []
  visit(tree, (node) => {
    if (node.type === 'element' && ['script', 'style', 'head'].includes(node.tagName)) return 'skip'
    if (node.type === 'text') texts.push(node.value)
    return undefined
  })
  return texts.join('').replaceAll(/\s+/g, ' ').trim()
}

/** Every element of a tree that is one. */
export function elements(tree: Nodes, isOne: (element: Element) => boolean): readonly Element[] {
  const found: Element[] = []
  visit(tree, 'element', (element) => {
    if (isOne(element)) found.push(element)
  })
  return found
}

export function byTag(tree: Nodes, tagName: string): readonly Element[] {
  return elements(tree, (element) => element.tagName === tagName)
}

export function byClass(tree: Nodes, name: string): readonly Element[] {
  return elements(tree, ({properties}) => {
    const {className} = properties
    return Array.isArray(className) && className.includes(name)
  })
}

export function byId(tree: Nodes, id: string): Element {
  const [found] = elements(tree, ({properties}) => properties.id === id)
  if (found === undefined) throw new Error(`nothing has the id ${id}`)
  return found
}

/** The cells of each row of a table, as text. */
export function rowsOf(tree: Nodes): readonly (readonly string[])[] {
  return byTag(tree, 'tr').map((row) =>
    elements(row, ({tagName}) => tagName === 'th' || tagName === 'td').map(textOf),
  )
}
