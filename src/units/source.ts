/** One independent reason why a figure is not exact: one weighing, one printed figure. */
export interface Source {
  readonly kind: 'weighing' | 'measure' | 'yield' | 'label' | 'table' | 'loss' | 'stated'
  /** In a writer's words, e.g. `weighing of pearl barley` or `energy on the label of skyr, plain`. */
  readonly subject: string
}
