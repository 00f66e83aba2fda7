import type {Element, ElementContent, RootContent} from 'hast'

/**
 * Nodes with some of their elements replaced, from the outside in. What stays the same is the old
 * node itself: a page may share its parts with others, and a copy of everything costs more than
 * making it did.
 * @param replace gives the element itself where it stays; what it gives is gone through as well
 */
export function withElements<Node extends RootContent>(
  nodes: readonly Node[],
  replace: (element: Element) => ElementContent,
): (Node | ElementContent)[] {
  return nodes.map((node) => {
    if (node.type !== 'element') return node
    const replaced = replace(node)
    if (replaced.type !== 'element') return replaced
    const children = withElements(replaced.children, replace)
    const isSame = children.every((child, index) => child === replaced.children[index])
    return isSame ? replaced : {...replaced, children}
  })
}
