/** Texts that a script replaces and puts back: what the build wrote is never worked out again. */

const written = new WeakMap<Element, readonly Node[]>()

export function rewrite(element: Element | null | undefined, ...nodes: (Node | string)[]): void {
  if (!element) return
  if (!written.has(element)) written.set(element, [...element.childNodes])
  element.replaceChildren(...nodes)
}

export function putBack(element: Element | null | undefined): void {
  const nodes = element && written.get(element)
  if (nodes) element.replaceChildren(...nodes)
}
