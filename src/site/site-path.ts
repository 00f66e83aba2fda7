import {workFolderName} from './work-folder.ts'

/**
 * Whether a path may be written below the site folder: relative, with `/`, no step up, nothing a
 * file system reads otherwise than it looks. Checked on what templates produce and on what is
 * read back from disk, so that neither a slug nor a tampered manifest leads out of the site.
 */
export function isSitePath(path: string): boolean {
  const steps = path.split('/')
  const isPlain = steps.every(
    (step) => step !== '' && step !== '.' && step !== '..' && !unsafeCharacter.test(step),
  )
  return isPlain && steps[0]?.toLowerCase() !== workFolderName
}

// Backslash and colon are separators on Windows; control characters hide in a listing.
const unsafeCharacter = /[\\:\p{Cc}]/u
