import type {Element, ElementContent} from 'hast'
import type {
  Break,
  Code,
  Heading,
  Html,
  Image,
  ImageReference,
  InlineCode,
  Link,
  LinkReference,
  Paragraph,
  Parents,
  Root,
  Text,
} from 'mdast'
import {defaultHandlers, type Handlers, type State} from 'mdast-util-to-hast'
import {type BodyReading, placeOf} from './body-reading.ts'
import {heading} from './headings.ts'
import {image, imageReference} from './image.ts'
import {link, linkReference} from './link.ts'
import {PassageBuilder} from './passage-builder.ts'
import {rawHtml} from './raw-html.ts'

/** How each kind of node becomes HTML, and what is gathered from it on the way. */
export function bodyHandlers(reading: BodyReading): Handlers {
  return {
    root: (state: State, node: Root): ElementContent[] => {
      keepToTheTree(state)
      return state.wrap(state.all(node))
    },
    heading: (state: State, node: Heading) => heading(reading, state, node),
    paragraph: (state: State, node: Paragraph, parent: Parents | undefined): Element => {
      const kind = parent?.type === 'listItem' ? 'step' : 'text'
      const {children} = reading.walkPassage(kind, state, node)
      return {type: 'element', tagName: 'p', properties: {}, children}
    },
    text: (state: State, node: Text) => {
      reading.open.addText(node)
      return defaultHandlers.text(state, node)
    },
    inlineCode: (state: State, node: InlineCode) => {
      reading.open.addInlineCode(node)
      return defaultHandlers.inlineCode(state, node)
    },
    break: (state: State, node: Break) => {
      reading.open.addLineBreak(node.position)
      return defaultHandlers.break(state, node)
    },
    code: (state: State, node: Code) => {
      const passage = new PassageBuilder(reading.context.source.text)
      passage.addCodeBlock(node)
      reading.passages.push(passage.passage('text', placeOf(node)))
      return defaultHandlers.code(state, node)
    },
    link: (state: State, node: Link) => link(reading, state, node),
    linkReference: (state: State, node: LinkReference) => linkReference(reading, state, node),
    image: (state: State, node: Image) => image(reading, state, node),
    imageReference: (state: State, node: ImageReference) => imageReference(reading, state, node),
    html: (_: State, node: Html, parent: Parents | undefined): ElementContent | undefined =>
      rawHtml(reading, node, parent),
  }
}

/**
 * Leaves out what a tree may carry besides Markdown: places, which nobody needs from here on, and
 * element names, attributes or children that a plugin of another pipeline asked for.
 */
function keepToTheTree(state: State): void {
  state.patch = () => undefined
  state.applyData = (_, element) => element
}
