/**
 * The language that checks speak, for the parts of a page that repeat them: screen readers then say
 * them as English. Undefined where the whole page is English.
 */
export function checksLanguage({language}: {readonly language: string}): 'en' | undefined {
  return language === 'en' ? undefined : 'en'
}
