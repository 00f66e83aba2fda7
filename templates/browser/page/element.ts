/** A new element with what is in it. */
export function element<K extends keyof HTMLElementTagNameMap>(
  name: K,
  className: string,
  ...children: readonly (Node | string)[]
): HTMLElementTagNameMap[K] {
  const made = document.createElement(name)
  if (className !== '') made.className = className
  made.append(...children)
  return made
}
