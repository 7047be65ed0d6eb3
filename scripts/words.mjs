/**
 * The languages of the page. All she reads stands in `NAME.words.ts`, in English, and beside it in
 * `NAME.words.de.ts`. A build for another language takes its words files in place of the English,
 * so no module asks which language it is in, and each page carries only its own words.
 */
import { build } from 'vite'

/** The English page is made by the build itself; these are made after it, into the same folder. */
export const OTHER_LANGUAGES = /** @type {const} */ (['de'])
const ENGLISH = /\.words\.ts$/

/** The language a build is for: the mode, where it is one of ours. */
export const languageOf = (/** @type {string} */ mode) =>
  OTHER_LANGUAGES.find((language) => language === mode) ?? 'en'

/**
 * @param {string} language
 * @returns {import('vite').Plugin}
 */
export function wordsOf(language) {
  return {
    name: 'words',
    enforce: 'pre',
    async resolveId(source, importer, options) {
      if (language === 'en' || !ENGLISH.test(source)) return null
      const sister = source.replace(ENGLISH, `.words.${language}.ts`)
      const found = await this.resolve(sister, importer, { ...options, skipSelf: true })
      if (!found) throw new Error(`words: ${source} of ${importer} has no sister in "${language}"`)
      return found
    },
  }
}

/**
 * After the English page, before what lies in the folder is listed for offline use.
 *
 * @returns {import('vite').Plugin}
 */
export function otherLanguages() {
  return {
    name: 'other-languages',
    apply: 'build',
    closeBundle: {
      order: 'pre',
      sequential: true,
      async handler() {
        for (const mode of OTHER_LANGUAGES) await build({ mode, logLevel: 'warn' })
      },
    },
  }
}
