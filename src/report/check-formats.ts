/** How `check` prints what it finds: for people, and for the programs that read it. */
export const checkFormats = ['text', 'json', 'github', 'sarif', 'junit'] as const

export type CheckFormat = (typeof checkFormats)[number]
