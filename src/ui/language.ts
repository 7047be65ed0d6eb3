/**
 * Which language she reads. Each language is a page of its own, built with its own words
 * (`scripts/words.mjs`); her work lies in one store and opens in both.
 */
import { LANGUAGE } from './language.words.ts'

export type Language = 'en' | 'de'

/** Seen from the folder the app lies in. */
export const PAGES: Readonly<Record<Language, string>> = { en: './', de: './de.html' }
export const LANGUAGES = Object.keys(PAGES) as readonly Language[]

export const isLanguage = (value: unknown): value is Language =>
  LANGUAGES.some((language) => language === value)

/**
 * @param chosen what she chose on this device, if she did
 * @param asked what the browser asks for, best first (BCP 47 tags)
 */
export function languageFor(chosen: Language | undefined, asked: readonly string[]): Language {
  if (chosen) return chosen
  return asked.map((tag) => tag.slice(0, 2).toLowerCase()).find(isLanguage) ?? 'en'
}

/** The page she should be on instead of this one, or undefined where this is it. */
export function pageInstead(
  chosen: Language | undefined,
  asked: readonly string[],
): string | undefined {
  const language = languageFor(chosen, asked)
  return language === LANGUAGE ? undefined : PAGES[language]
}
