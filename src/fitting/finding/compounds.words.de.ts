/** What stands between the parts of a German compound: nothing, or a sound that joins them. */
import type { JOINTS as English } from './compounds.words.ts'

export const JOINTS: typeof English = ['', 's', 'n', 'en', 'es', 'er', 'e']
