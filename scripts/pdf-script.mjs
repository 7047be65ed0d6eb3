/**
 * The code that writes PDF files, from its packages alone, in a script of its own. No word of ours
 * stands in it, so the pages of all languages and their workers make the same script by the same
 * name, and it is kept once instead of once for each.
 */
export const pdfScript = {
  name: 'pdf-writer',
  test: /\/node_modules\/@cantoo\//,
}
