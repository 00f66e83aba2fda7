import type {Result} from 'hastscript'

/** A piece of a page; undefined where there is nothing to show. */
export type Part = Result | string | undefined
