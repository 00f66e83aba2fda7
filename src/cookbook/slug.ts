import {asciiSlug} from './ascii-slug.ts'
import type {Report} from './problems.ts'

const slugForm = /^[a-z0-9]+(?:-[a-z0-9]+)*$/

/** Longer names do not fit into some file systems, with what a build adds to them. */
const longestSlug = 100

/**
 * The slug of a Markdown file: its name without `.md`, which becomes an address on the web.
 * @param folder the file must stand directly in
 * @returns nothing where the name is no slug, or the file stands elsewhere; that is reported
 */
export function slugOf(path: string, folder: string, report: Report): string | undefined {
  const [first, name = '', ...below] = path.split('/')
  if (first !== folder || below.length > 0) {
    report({
      ruleId: 'slug-name',
      reason: `File \`${path}\` stands elsewhere, expected it directly in \`${folder}/\``,
      actual: path,
    })
    return undefined
  }
  const slug = name.replace(/\.md$/, '')
  if (slugForm.test(slug) && slug.length <= longestSlug) return slug
  const instead = `${asciiSlug(slug).slice(0, longestSlug).replace(/-$/, '') || 'name'}.md`
  report({
    ruleId: 'slug-name',
    reason: `File name \`${name}\` is no address, expected lower-case letters a to z, digits and single hyphens: \`${instead}\``,
    actual: name,
    expected: [instead],
    note: 'Rename the file, and the links and components that name it.',
  })
  return undefined
}
