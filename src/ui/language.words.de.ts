import type { GUIDE as Guide, LANGUAGE as Here, LANGUAGE_NAMES as Names } from './language.words.ts'

export const LANGUAGE: typeof Here = 'de'
export const LANGUAGE_NAMES: typeof Names = { en: 'English', de: 'Deutsch' }

export const GUIDE: typeof Guide = './guide/de/index.html'
