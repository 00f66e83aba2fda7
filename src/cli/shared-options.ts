/** Options every command understands, before or after its name. */
export interface SharedOptions {
  readonly color: boolean
}
