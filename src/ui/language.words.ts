/** The language of this page, and what each language calls itself (the same in all of them). */
import type { Language } from './language.ts'

export const LANGUAGE: Language = 'en'
export const LANGUAGE_NAMES: Readonly<Record<Language, string>> = { en: 'English', de: 'Deutsch' }

/** Where its guide lies, seen from the folder of the app. */
export const GUIDE: string = './guide/index.html'
