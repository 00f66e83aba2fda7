/** Where the preview's own files stand, beside those of the site. No page of a cookbook has a dot. */

const folder = '.preview'

export const previewScriptPath = `${folder}/preview.js`
export const previewStylesheetPath = `${folder}/preview.css`
export const eventsPath = `${folder}/events`
