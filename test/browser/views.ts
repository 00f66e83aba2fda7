/**
 * In which every page is looked at.
 * @param paperWidth pixels of CSS: A4 has 794 across, and 680 within the margins of a page
 */
export function views(paperWidth: number) {
  return [
    {name: 'in light', colorScheme: 'light', media: 'screen', width: 1200},
    {name: 'in the dark', colorScheme: 'dark', media: 'screen', width: 1200},
    {name: 'on a phone', colorScheme: 'light', media: 'screen', width: 320},
    {name: 'on paper', colorScheme: 'light', media: 'print', width: paperWidth},
  ] as const
}
