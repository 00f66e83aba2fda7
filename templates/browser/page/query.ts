/** The first element that a selector finds; null where there is none. */
export function one<E extends Element = HTMLElement>(
  selector: string,
  within: ParentNode = document,
): E | null {
  return within.querySelector<E>(selector)
}

/** All elements that a selector finds, in the order of the page. */
export function all<E extends Element = HTMLElement>(
  selector: string,
  within: ParentNode = document,
): readonly E[] {
  return [...within.querySelectorAll<E>(selector)]
}
