import type {Element, ElementContent} from 'hast'
import type {Heading, Paragraph} from 'mdast'
import type {State} from 'mdast-util-to-hast'
import type {Node, Position} from 'unist'
import type {Located} from '../problem.ts'
import type {Report} from '../problems.ts'
import type {FileLink, IngredientLine, IngredientLink, Passage, Picture} from '../recipe.ts'
import type {SourceText} from '../sources.ts'
import {PassageBuilder} from './passage-builder.ts'

/** What the body of a Markdown file is read with. */
export interface BodyContext {
  /** The whole file; the tree's offsets count in its text. */
  readonly source: SourceText
  /** Ingredients that links print the amount of; none in a plan or a page. */
  readonly lines: readonly IngredientLine[]
  /** Level of the body's highest headings on its page, 2 to 6. */
  readonly highestHeading: number
  /** What a link to nowhere within the page is called. */
  readonly anchorRule: 'unknown-ingredient-link' | 'unknown-heading-link'
  readonly report: Report
}

/** A heading before the levels of the others are known. */
export interface HeadingInBody {
  readonly element: Element
  readonly depth: number
}

/** A link within the page before all its headings are known. */
export interface AnchorLink {
  readonly element: Element
  readonly anchor: string
  readonly place: Position
}

const fileStart: Position = {
  start: {line: 1, column: 1, offset: 0},
  end: {line: 1, column: 1, offset: 0},
}

/** What one walk over a body gathers. */
export class BodyReading {
  readonly context: BodyContext
  readonly lineByAnchor: ReadonlyMap<string, IngredientLine>
  readonly passages: Passage[] = []
  readonly ingredientLinks: IngredientLink[] = []
  readonly images: Located<Picture>[] = []
  readonly links: FileLink[] = []
  readonly headings: HeadingInBody[] = []
  readonly anchorLinks: AnchorLink[] = []
  /** Ids that are taken on the page: the ingredients', then the headings'. */
  readonly ids: Set<string>
  /** The passage whose nodes are being walked. */
  open: PassageBuilder

  constructor(context: BodyContext) {
    this.context = context
    this.lineByAnchor = new Map(context.lines.map((line) => [line.anchor, line]))
    this.ids = new Set(this.lineByAnchor.keys())
    this.open = new PassageBuilder(context.source.text)
  }

  /** Walks what is inside a node, as a passage of its own. */
  walkPassage(kind: Passage['kind'], state: State, node: Heading | Paragraph): Walked {
    const around = this.open
    this.open = new PassageBuilder(this.context.source.text)
    const children = state.all(node)
    const passage = this.open.passage(kind, placeOf(node))
    this.open = around
    if (passage.text.trim() !== '') this.passages.push(passage)
    return {children, text: passage.text}
  }
}

interface Walked {
  readonly children: ElementContent[]
  readonly text: string
}

/** A node's place; the beginning of the file where a plugin made the node up. */
export function placeOf({position}: Node): Position {
  return position?.start.offset === undefined ? fileStart : position
}
