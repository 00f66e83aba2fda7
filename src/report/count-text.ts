/** `1 recipe`, `2 recipes`. */
export function countText(count: number, one: string, many: string = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`
}
